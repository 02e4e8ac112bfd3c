package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Act;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Row;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Test;

/** The sentences of the page that is read: called for by something that a rule says, short, easy, and translated. */
final class ActsTableTest {
    /** A topic that a rule begins, and ends with what it met. */
    private static final Pattern BEGUN = Pattern.compile("\"([a-z]+(?:-[a-z]+)+-)\" \\+");

    private static final CodeBook BOOK = CodeBook.read(RuleFolder.at(Path.of("rules")), "gb");
    private static final List<Act> ACTS = BOOK.rows(LocalDate.of(2026, 11, 28)).stream()
            .filter(Act.class::isInstance)
            .map(Act.class::cast)
            .toList();
    private static final int LONGEST = 90;
    /** Plain English begins at 60 (Flesch, A new readability yardstick, Journal of Applied Psychology 32, 1948). */
    private static final double PLAIN = 60;

    private static final List<String> PARTS = List.of("do-now", "stop", "conflict", "wearer", "leave");

    private static String texts(String ending) {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            return files.filter(f -> f.toString().endsWith(ending))
                    .map(ActsTableTest::text)
                    .collect(Collectors.joining());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyActIsCalledForByWhatARuleConcludes() {
        String rules = texts(".drl");
        String duties = texts("duties.yaml");
        assertTrue(ACTS.size() > 20);
        for (Act act : ACTS) {
            for (String key : act.calledFor()) {
                String subject = key.substring(key.indexOf(':') + 1).replaceAll("[*=].*|-\\*", "");
                boolean said = subject.isEmpty()
                        || rules.contains("\"" + subject)
                        || BEGUN.matcher(rules).results().anyMatch(begun -> subject.startsWith(begun.group(1)))
                        || key.startsWith("owed:") && duties.contains("- id: " + subject + "\n")
                        || BOOK.vocabulary().agents().contains(subject);
                assertTrue(said, act.id() + " waits for " + key);
            }
        }
    }

    @Test
    void everyActIsOneShortSentenceOrTwo() {
        for (Act act : ACTS) {
            assertTrue(act.says().length() <= LONGEST, act.says());
            assertTrue(act.says().endsWith("."), act.says());
            assertTrue(PARTS.contains(act.part()), act.id());
        }
    }

    @Test
    void theyAreEasyToRead() {
        for (String part : PARTS) {
            String all = ACTS.stream()
                    .filter(a -> a.part().equals(part))
                    .map(Act::says)
                    .collect(Collectors.joining(" "));
            assertTrue(ease(all) >= PLAIN, part + " has a reading ease of " + ease(all));
        }
    }

    @Test
    void theMeasureOfEaseAgreesWithASentenceCountedByHand() {
        // "The cat sat on the mat." has 6 words, 1 sentence and 6 syllables: 206.835 - 1.015 x 6 - 84.6 x 1 = 116.145.
        assertEquals(116.145, ease("The cat sat on the mat."), 1e-9);
    }

    @Test
    void everyActIsTranslated() {
        for (String language : Words.LANGUAGES.subList(1, Words.LANGUAGES.size())) {
            for (Act act : ACTS) {
                String own = Words.in(language).sayOr("act." + act.id(), act.says());
                assertTrue(!own.equals(act.says()), language + " lacks act." + act.id());
            }
        }
    }

    @Test
    void everythingThatADutyIsDoneByHasWords() {
        for (String code : RuleFolder.at(Path.of("rules")).codes()) {
            CodeBook book = CodeBook.read(RuleFolder.at(Path.of("rules")), code);
            for (Row row : book.rows(LocalDate.of(2026, 11, 28))) {
                if (row instanceof Duty duty) {
                    String key = "done." + duty.doneBy();
                    assertTrue(Words.in("en").all().containsKey(key), key + " of " + duty.id());
                }
            }
        }
    }

    private static double ease(String text) {
        List<String> words = Pattern.compile("[A-Za-z]+")
                .matcher(text)
                .results()
                .map(m -> m.group().toLowerCase(java.util.Locale.ROOT))
                .toList();
        long sentences = text.chars().filter(c -> c == '.' || c == ':').count();
        long syllables = words.stream().mapToLong(ActsTableTest::syllables).sum();
        return 206.835 - 1.015 * words.size() / sentences - 84.6 * syllables / words.size();
    }

    /** Groups of vowels; a silent e at the end counts for nothing. */
    private static long syllables(String word) {
        String heard = word.length() > 2 ? word.replaceFirst("(?<![aeiouyl])e$", "") : word;
        return Math.max(1, Pattern.compile("[aeiouy]+").matcher(heard).results().count());
    }
}
