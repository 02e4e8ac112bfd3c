package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TypedApart;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.junit.jupiter.api.Test;

/** What a row says of how far it was seen rests on one list; that list is compared with the comparison of November 2026. */
final class SeenTest extends CopiedRules {
    private static final Path COMPARISON = Path.of("../shared/reference/verified-2026-11.yaml");
    private static final String CITED = "comparison of November 2026: ";
    private static final String FROM = " from ";

    /** Rows that say less than the comparison, with the reason: a table says cross-checked only where it names two copies. */
    private static final Map<String, String> LATER = Map.of(
            "danger-levels#sulphur-dioxide",
            "read: the comparison names it twice, as cross-checked and as weak, and one of its two copies quotes the other",
            "us-action-levels#action-level-dichloromethane",
            "read: the comparison says cross-checked and names one copy");

    /** Of each row that the comparison names with a number, the tables hold that number and say as much as it does. */
    @Test
    void theTablesSayWhatTheComparisonSaw() {
        assumeTrue(Files.exists(COMPARISON), "the comparison lies beside the source tree");
        Map<String, List<DatedRow>> held = new HashMap<>();
        for (String code : RuleFolder.shipped().codes()) {
            CodeBook.read(RuleFolder.shipped(), code).tables().stream()
                    .flatMap(t -> t.rows().stream())
                    .distinct()
                    .forEach(r -> held.merge(
                            r.row().ref().address(), List.of(r), (a, b) -> Stream.concat(a.stream(), b.stream())
                                    .distinct()
                                    .toList()));
        }
        Set<String> differs = new TreeSet<>();
        int compared = 0;
        for (Map<String, Located> entry : compared()) {
            String address = entry.get("row").text();
            List<DatedRow> rows = held.getOrDefault(StringUtils.substringBefore(address, FROM), List.of());
            String confidence = entry.get("confidence").text();
            Set<String> said = rows.stream()
                    .filter(r -> value(r.row()).compareTo(number(entry.get("found"))) == 0)
                    .map(r -> r.row().ref().citation().confidence().key())
                    .collect(Collectors.toSet());
            compared += said.isEmpty() ? 0 : 1;
            if (!said.isEmpty() && !said.contains(confidence) && !LATER.containsKey(address)) {
                differs.add(address + " says " + said + ", the comparison " + confidence);
            }
        }
        System.out.println("rows of the comparison found in the tables with their number: " + compared);
        assertTrue(compared > 200, "few rows");
        assertEquals(Set.of(), differs);
    }

    @Test
    void theListCitesOnlyWhatTheComparisonNames() {
        assumeTrue(Files.exists(COMPARISON), "the comparison lies beside the source tree");
        Set<String> named = new HashSet<>();
        compared().forEach(entry -> named.add(entry.get("row").text()));
        Set<String> cited = new TypedValues()
                .words().values().stream()
                        .map(TypedApart.Line::source)
                        .filter(s -> s.startsWith(CITED))
                        .map(s -> s.substring(CITED.length()))
                        .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(cited.size() > 100, cited::toString);
        cited.removeAll(named);
        assertEquals(Set.of(), cited);
    }

    @Test
    void aRowThatSaysItWasSeenMustStandInTheList() {
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "magnesium-oxide, unit: mg/m3, twa: 4,",
                "magnesium-oxide, confidence: read, unit: mg/m3, twa: 4,");
        List<String> problems = TypedValues.check(RuleFolder.at(rules)).stream()
                .map(p -> p.text())
                .filter(p -> p.contains("magnesium-oxide"))
                .toList();
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(
                problems.get(0).contains("is read, and no list says in which copy it was seen"), problems.toString());
    }

    private static List<Map<String, Located>> compared() {
        Map<String, Located> parts = YamlFiles.read(COMPARISON).entries();
        return Stream.of("corrected", "confirmed")
                .flatMap(part -> parts.get(part).items().stream())
                .map(Located::entries)
                .toList();
    }

    private static BigDecimal number(Located found) {
        return found.isScalar() && found.text().matches("[0-9.]+(e-?[0-9]+)?")
                ? new BigDecimal(found.text())
                : BigDecimal.ONE.negate();
    }

    private static BigDecimal value(Row row) {
        if (row instanceof Limit limit) {
            return limit.value();
        }
        if (row instanceof AssignedFactor factor) {
            return factor.factor();
        }
        if (row instanceof DangerLevel danger) {
            return danger.value();
        }
        return row instanceof Threshold threshold ? threshold.value() : BigDecimal.TEN.negate();
    }
}
