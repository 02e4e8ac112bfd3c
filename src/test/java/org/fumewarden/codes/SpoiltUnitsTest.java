package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A unit that is none is blamed in every kind of table that has one; common practice, no source. */
final class SpoiltUnitsTest {
    private static final Pattern UNIT = Pattern.compile("(?m)(?<=^|[{,] |[{])unit: (\"[^\"]*\"|[^,}\\n]+)");
    private static final Pattern KIND = Pattern.compile("(?m)^kind: (\\S+)");

    @Test
    void aSpoiltUnitIsBlamedInEveryKind() {
        RuleFolder rules = RuleFolder.shipped();
        List<String> accepted = new ArrayList<>();
        Set<String> kinds = new TreeSet<>();
        for (String name : rules.names("", ".yaml")) {
            String text = name.contains("/tables/") ? rules.text(name) : "";
            Matcher unit = UNIT.matcher(text);
            Matcher kind = KIND.matcher(text);
            while (unit.find() && kind.find(0)) {
                kinds.add(kind.group(1));
                String spoilt = text.substring(0, unit.start(1)) + "furlong" + text.substring(unit.end(1));
                Located root = YamlFiles.parse(name, spoilt);
                new TableReader(name, root).read();
                if (root.problems().stream().noneMatch(p -> p.message().contains("furlong"))) {
                    accepted.add(name + ": " + unit.group());
                }
            }
        }
        assertEquals(List.of(), accepted);
        assertEquals(20, kinds.size(), kinds.toString());
    }

    @Test
    void aRowWithoutAUnitIsBlamedWhereTheHeadRefersToTheRows() {
        String name = "shared/tables/blower-unit.yaml";
        Located root = YamlFiles.parse(name, """
                id: some-pack
                kind: pack-behaviour
                source: fumewarden
                clause: "a pack"
                edition: "1"
                unit: "as named in each row"
                confidence: practice
                checked-on: 2026-11-25
                rows:
                  - {id: cold, value: 5, unit: C}
                  - {id: warm, value: 40}
                """);
        new TableReader(name, root).read();
        assertEquals(List.of(11), root.problems().stream().map(Problem::line).toList());
    }
}
