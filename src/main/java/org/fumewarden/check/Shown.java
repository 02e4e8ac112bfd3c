package org.fumewarden.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Respirator;
import org.fumewarden.trail.Step;

/**
 * What an advice shows of the rule base, small enough to keep for every scenario.
 *
 * @param read the addresses of the rows that each rule read which fired, by its id
 * @param duties ids of the checks that are due
 * @param recommended the class of what is worn, when one is
 */
public record Shown(String code, Map<String, Set<String>> read, List<String> duties, Optional<String> recommended) {
    static Shown of(Advice advice) {
        Map<String, Set<String>> read = new TreeMap<>();
        for (Step step : advice.trail().steps()) {
            Set<String> rows = read.computeIfAbsent(step.rule(), r -> new TreeSet<>());
            step.premises().stream()
                    .filter(p -> p.kind().equals("row"))
                    .forEach(p -> rows.add(p.address().intern()));
        }
        return new Shown(
                advice.code(),
                read,
                advice.checks().stream().map(Check::id).toList(),
                advice.recommended().map(Respirator::deviceClass));
    }
}
