package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Everyday words find the answer that is meant, in each language, and never one that the tables do not have. */
class AliasesTest {
    private static final RuleFolder RULES = RuleFolder.shipped();
    private static final Vocabulary VOCABULARY = CodeBook.read(RULES, "gb").vocabulary();

    private static List<String> meant(String question, String word) {
        return VOCABULARY.meant(VOCABULARY.question(question).orElseThrow(), word);
    }

    /** The names of processes are those of ISO 4063 and ISO/TR 25901; MMA, SMAW, GMAW, GTAW and FCAW are its English and American short names. */
    @ParameterizedTest
    @CsvSource({
        "process, MMA, manual-metal-arc",
        "process, stick, manual-metal-arc",
        "process, E-Hand, manual-metal-arc",
        "process, MAG, mag-solid-wire",
        "process, TIG welding, tig",
        "process, WIG, tig",
        "process, GTAW, tig",
        "process, Sub-arc, submerged-arc",
        "coating, galv, zinc-galvanised",
        "coating, Feuerverzinkt, zinc-galvanised",
        "base-metal, Edelstahl, stainless-steel",
        "place, outside, outdoors",
        "facial-hair, yes, true",
        "facial-hair, Nein, false",
        "facial-hair, weiß nicht, unknown",
        "medically-cleared, no, false"
    })
    void aWordOfOneMeaningFindsIt(String question, String word, String id) {
        assertEquals(List.of(id), meant(question, word));
    }

    /** In British shops MIG is said of MAG on steel as well: a guess would choose another fume. */
    @Test
    void aWordOfSeveralMeaningsFindsThemAll() {
        assertEquals(List.of("mig-solid-wire", "mag-solid-wire", "mig-mag-pulsed"), meant("process", "MIG"));
        assertEquals(List.of("chromium-vi"), VOCABULARY.agentsMeant("CrVI"));
        assertTrue(VOCABULARY.agentsMeant("chromium").size() > 1);
        assertEquals(List.of(), meant("process", "knitting"));
        assertEquals(List.of(), meant("facial-hair", ""));
    }

    @Test
    void aCountryFindsItsRules() {
        assertEquals("gb", CodeBook.card(RULES, "UK").id());
        assertEquals("us", CodeBook.card(RULES, "usa").id());
        assertEquals("de", CodeBook.card(RULES, "Deutschland").id());
    }

    @Test
    void noWordLeadsToAnIdThatIsNotThere() {
        Set<String> known = new TreeSet<>(RULES.codes());
        known.addAll(Set.of("unknown", "true", "false"));
        known.addAll(VOCABULARY.agents());
        VOCABULARY.questions().forEach(q -> known.addAll(VOCABULARY.choices(q).keySet()));
        Set<String> lost = new TreeSet<>();
        Set<String> headings = new TreeSet<>(Set.of("code", "any", "agent"));
        VOCABULARY.questions().forEach(q -> headings.add(q.id()));
        int words = 0;
        for (String heading : headings) {
            for (var entry : VOCABULARY.aliases().under(heading).entrySet()) {
                words++;
                entry.getValue().stream()
                        .filter(id -> !known.contains(id))
                        .forEach(id -> lost.add(entry.getKey() + ": " + id));
            }
        }
        assertEquals(Set.of(), lost);
        assertTrue(words > 200, words + " words");
    }

    /** A word of one heading is used under a heading that some question has: a misspelt heading would be dead. */
    @Test
    void everyHeadingOfTheTablesIsAQuestion() {
        Set<String> headings = new TreeSet<>(Set.of("code", "any", "agent", "confidence"));
        VOCABULARY.questions().forEach(q -> headings.add(q.id()));
        for (String name : RULES.names("shared/aliases_", ".yaml")) {
            assertTrue(headings.containsAll(RULES.located(name).entries().keySet()), name);
        }
    }
}
