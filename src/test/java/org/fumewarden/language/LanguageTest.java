package org.fumewarden.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What people read is free of the habits that the list gives up. Common practice of plain language, no source. */
final class LanguageTest {
    private static final int LONGEST = 25;

    @Test
    void theSentencesOfRulesAreFreeOfThem() {
        assertEquals("", faults(Written.rules()));
    }

    @Test
    void noSentenceOfARuleIsLongerThanOneBreath() {
        List<Sentence> all = new ArrayList<>(Written.rules());
        all.addAll(Written.german());
        List<String> found = all.stream()
                .flatMap(s -> s.parts().stream()
                        .filter(p -> Sentence.words(p) > LONGEST)
                        .map(p -> Sentence.words(p) + " " + s.where() + ": " + p))
                .toList();
        assertEquals("", String.join("\n", found));
    }

    @Test
    void theTablesAreFreeOfThem() {
        assertEquals("", faults(Written.tables()));
    }

    @Test
    void theMessagesAreFreeOfThem() {
        assertEquals("", faults(Written.messages("messages.properties", "english")));
    }

    @Test
    void theLiteralsOfTheProgramAreFreeOfThem() {
        List<Sentence> literals = Written.literals();
        assertTrue(literals.size() > 1000, "few literals were found: " + literals.size());
        assertEquals("", faults(literals));
    }

    @Test
    void theDocumentsAreFreeOfThem() {
        List<Sentence> documents = Written.documents();
        assertTrue(documents.size() > 300, "few lines were found: " + documents.size());
        assertEquals("", faults(documents));
    }

    @Test
    void theGermanSentencesAreGerman() {
        assertEquals("", faults(Written.german()));
        assertEquals("", faults(Written.messages("messages_de.properties", "german")));
        assertEquals("", faults(Written.messages("names_de.properties", "german")));
    }

    @Test
    void aHabitIsFoundWhereItStands() {
        List<Sentence> bad = List.of(
                new Sentence("a", "english", "Maybe supplied air."),
                new Sentence("b", "us", "Use an airline."),
                new Sentence("c", "page", "Oil mist: false."),
                new Sentence("d", "english", "It is examined every P1M."));
        assertEquals(4, faults(bad).lines().count());
        assertEquals("", faults(List.of(new Sentence("e", "english", "Use an airline."))));
    }

    static String faults(List<Sentence> sentences) {
        List<Habit> habits = Habit.all();
        List<String> found = new ArrayList<>();
        for (Sentence sentence : sentences) {
            for (Habit habit : habits) {
                if (habit.concerns(sentence.kind())
                        && !habit.found(sentence.text()).isEmpty()) {
                    found.add(sentence.where() + ": \"" + habit.found(sentence.text()) + "\" in: " + sentence.text()
                            + " -- " + habit.reason());
                }
            }
        }
        return String.join("\n", found);
    }
}
