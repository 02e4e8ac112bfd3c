package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading of words, numbers and places in files. */
final class ReadingTest {
    private static final List<String> AGENTS =
            List.of("manganese-respirable", "manganese-inhalable", "ozone", "nickel");

    @Test
    void theNearestWordComesFirst() {
        assertEquals(
                "manganese-respirable",
                Nearest.to("manganese-respirabel", AGENTS).get(0));
        assertEquals("ozone", Nearest.to("OZON", AGENTS).get(0));
        assertEquals(2, Nearest.to("manganese", AGENTS).size());
    }

    @Test
    void anotherSubstanceOrUnitIsNoSlip() {
        List<String> known =
                List.of("chlorine", "manganese-respirable", "sulphur-dioxide", "ozone", "U-014", "UNIT-0014");
        for (String other : List.of("chrome", "sulphur-trioxide", "U-099", "U-015", "UNIT-0015", "manganese", "oz")) {
            assertEquals(java.util.Optional.empty(), Nearest.slip(other, known), other);
        }
        for (String slip : List.of("manganese-respirabel", "manganes-respirable", "sulphur-dioxyde", "Ozon")) {
            assertTrue(Nearest.slip(slip, known).orElse("").startsWith("did you mean"), slip);
        }
    }

    @Test
    void withoutANearWordAFewAreListed() {
        assertEquals(
                "use one of: manganese-inhalable, manganese-respirable, nickel, ozone.", Nearest.remedy("xyz", AGENTS));
        List<String> many = java.util.stream.IntStream.range(0, 30)
                .mapToObj(i -> "word" + (char) ('a' + i % 26) + i)
                .toList();
        assertTrue(Nearest.remedy("###", many).endsWith("... (30 in all)."), Nearest.remedy("###", many));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "0.5", "-3", "+4.25", "1e3", "1.5E-3", "0000001"})
    void plainNumbersAreRead(String text) {
        assertEquals(new java.math.BigDecimal(text), Numbers.decimal(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".5",
                "5.",
                "1,5",
                "1 000",
                "0x10",
                "NaN",
                "Infinity",
                "1e999",
                "1e-999",
                "--1",
                "1e",
                "٣",
                "1_000"
            })
    void otherNumbersAreRefused(String text) {
        assertThrows(NumberFormatException.class, () -> Numbers.decimal(text));
    }

    @Test
    void aPlaceKnowsItsPathAndTheLineOfItsName() {
        Located root = YamlFiles.parse("f.yaml", "a: 1\nb:\n  c:\n    - x\n    - y\n");
        Located below = root.entries().get("b").entries().get("c");
        assertEquals("b.c", below.path());
        assertEquals(3, below.line());
        assertEquals("b.c.1", below.items().get(1).path());
        assertEquals(5, below.items().get(1).line());
    }

    @Test
    void aNameThatIsGivenTwiceIsNamedAtItsSecondLine() {
        Located root = YamlFiles.parse("f.yaml", "a: 1\na: 2\n");
        root.entries();
        assertEquals(
                "f.yaml:2 a is given twice.\nKeep one of the two.",
                root.problems().get(0).text());
    }

    @Test
    void whatIsWrongIsGatheredAndThrownTogether() {
        Located root = YamlFiles.parse("f.yaml", "one: 1\ntow: 2\nthee: 3\n");
        root.entries(Set.of("one", "two", "three"));
        InputException fault = assertThrows(InputException.class, root::settle);
        assertEquals(2, fault.problems().size());
        assertTrue(fault.getMessage().contains("f.yaml:2 tow"), fault.getMessage());
    }

    @Test
    void valuesThatArePrintedAreShortAndPlain() {
        assertEquals(60, Located.shown("x".repeat(500)).length());
        assertFalse(Located.shown("a\u001b[31mb\n").matches("(?s).*\\p{Cntrl}.*"));
    }

    @Test
    void singleValuesAreSetByPath() {
        Located root = YamlFiles.parse("f.yaml", "a: {b: 1}\nlist: [{agent: ozone, twa: 1}, {agent: nickel}]\n");
        Located two = YamlFiles.parse("v", "two");
        assertTrue(YamlEdits.set(root, "a.b", two));
        assertTrue(YamlEdits.set(root, "new.deep", two));
        assertTrue(YamlEdits.set(root, "list.ozone.twa", two));
        assertTrue(YamlEdits.set(root, "list.1.twa", two));
        assertEquals("two", root.entries().get("a").entries().get("b").text());
        assertEquals("two", root.entries().get("new").entries().get("deep").text());
        List<Located> items = root.entries().get("list").items();
        assertEquals("two", items.get(0).entries().get("twa").text());
        assertEquals("two", items.get(1).entries().get("twa").text());
    }

    @Test
    void aPathThroughASingleValueOrPastAListIsRefused() {
        Located root = YamlFiles.parse("f.yaml", "a: 1\nlist: [{agent: ozone}]\n");
        Located two = YamlFiles.parse("v", "two");
        assertFalse(YamlEdits.set(root, "a.b", two));
        assertFalse(YamlEdits.set(root, "list.7.twa", two));
    }
}
