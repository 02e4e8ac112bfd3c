package org.fumewarden.duties;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Figure;

/** The facts on which duties hang, and the values they may have. */
public final class Vocabularies {
    private static final String TABLE = "shared/tables/duty-facts.yaml";
    private static final String PREFIX = "duty-";

    private final Map<String, List<String>> facts;

    private Vocabularies(Map<String, List<String>> facts) {
        this.facts = facts;
    }

    /** The vocabulary of the shipped rules on a day; it is shared by all codes. */
    public static Vocabularies shipped(LocalDate day) {
        RuleFolder folder = RuleFolder.shipped();
        Map<String, List<String>> facts = new TreeMap<>();
        CodeBook.table(folder, TABLE).rows().stream()
                .filter(row -> row.inForce(day))
                .map(row -> ((Figure) row.row()).cells())
                .forEach(cells -> facts.computeIfAbsent(
                                cells.get("set").substring(PREFIX.length()), k -> new ArrayList<>())
                        .add(cells.get("item")));
        return new Vocabularies(facts);
    }

    public Map<String, List<String>> facts() {
        return facts;
    }

    /** The facts among the values, checked; they are taken out of the map. */
    public Map<String, List<String>> take(String place, Map<String, String> values) {
        Map<String, List<String>> taken = new LinkedHashMap<>();
        for (String fact : facts.keySet()) {
            String value = values.remove(fact);
            if (value != null && !value.isBlank()) {
                taken.put(
                        fact, Arrays.stream(value.split(",")).map(String::strip).toList());
            }
        }
        taken.forEach((fact, words) -> words.forEach(word -> check(place, fact, word)));
        return taken;
    }

    private void check(String place, String fact, String word) {
        if (!word.equals("unknown") && !facts.get(fact).contains(word)) {
            throw new InputException(new Problem(
                    place,
                    0,
                    fact,
                    "cannot be \"" + Located.shown(word) + "\".",
                    Nearest.remedy(word, facts.get(fact))));
        }
    }
}
