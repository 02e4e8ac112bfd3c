package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Duty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors, classes and duties in people's words. Classes after EN 149, EN 136, EN 140, EN 12941, EN 12942, EN 14594. */
class AnswerWordsTest {
    private static final Told BENCH = Room.told(Room.BENCH, Map.of());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20",
                "20,0",
                "20.0",
                "APF 20",
                "apf of 20",
                "a factor of 20",
                "20x",
                "20 times",
                "Faktor 20",
                "20-fold",
                "at least 20",
                "VdGW 20",
                "x20"
            })
    void twentyIsTwentyHoweverItIsWritten(String answer) {
        assertEquals(Optional.of(0), FactorWords.read(answer).map(f -> f.compareTo(new BigDecimal("20"))), answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "twenty monkeys", "20 or 40", "APF", "2O", "20 bananas", "-20"})
    void whatIsNoFactorIsNotRead(String answer) {
        assertEquals(Optional.empty(), FactorWords.read(answer), answer);
    }

    @ParameterizedTest
    @CsvSource({
        "FFP 3, ffp3",
        "ffp3, ffp3",
        "an FFP3, ffp3",
        "powered hood TH3, th3",
        "TH 3, th3",
        "th3 hood, th3",
        "powered hood class 2, th2",
        "Gebläsehaube TH3, th3",
        "full mask P3, full-mask-p3",
        "full-face mask with P3 filter, full-mask-p3",
        "Vollmaske P3, full-mask-p3",
        "Halbmaske mit P2, half-mask-p2",
        "half mask P3, half-mask-p3",
        "half-mask-p3, half-mask-p3",
        "airline hood class 4, airline-hood-4",
        "fresh air hose half mask, fresh-air-hose-half-mask",
        "SCBA positive pressure, self-contained-positive"
    })
    void aClassIsNamedByIdOrWords(String answer, String id) {
        List<DeviceClass> read = new ClassWords(BENCH.devices()).read(answer);
        assertEquals(List.of(id), read.stream().map(DeviceClass::id).toList(), answer);
    }

    @Test
    void aPoweredHoodIsThreeClassesUntilItsClassIsSaid() {
        assertEquals(
                Set.of("th1", "th2", "th3"),
                Set.copyOf(new ClassWords(BENCH.devices())
                        .read("powered hood").stream().map(DeviceClass::id).toList()));
    }

    @ParameterizedTest
    @CsvSource({
        "train the wearer, training",
        "training, training",
        "Unterweisung, training",
        "fit test, fit-test",
        "face-fit test, fit-test",
        "Dichtsitzprüfung, fit-test",
        "Dichtsitzpruefung, fit-test",
        "seal check, seal-check",
        "thorough examination, examination",
        "monthly thorough visual examination, examination",
        "check before use, before-use-check",
        "health surveillance, medical/surveillance",
        "air monitoring, air-test/workplace",
        "store it properly, storage",
        "blood lead, medical/lead-blood"
    })
    void aDutyIsNamedInPeoplesWords(String answer, String deed) {
        List<Set<String>> read = DutyWords.read(answer);
        boolean named = read.stream().anyMatch(r -> r.contains(deed));
        assertEquals(!deed.equals("none"), named, answer + " is read as " + read);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "banana test",
                "go home after work",
                "no training",
                "skip the fit test",
                "never examine it",
                "test",
                "keine Unterweisung",
                "the wearer",
                "monthly",
                ""
            })
    void whatNamesNoDutyIsNotRead(String answer) {
        assertEquals(List.of(), DutyWords.read(answer), answer);
    }

    @Test
    void everyDeedOfEveryCodeHasItsWordsInEachLanguage() {
        Set<String> lacking = new TreeSet<>();
        for (String code : List.of("gb", "us", "de", "au", "nz")) {
            Room.advisor(code).base().rowsOn(Room.DAY).stream()
                    .filter(Duty.class::isInstance)
                    .map(r -> ((Duty) r).doneBy())
                    .filter(d -> WordTable.rows("duty-words").stream()
                            .noneMatch(r -> r.optional("id").equals(Optional.of(d))
                                    && !r.words("en").isEmpty()
                                    && !r.words("de").isEmpty()))
                    .forEach(lacking::add);
        }
        assertEquals(Set.of(), lacking);
    }

    @Test
    void eachCuratedPhraseNamesItsOwnDeed() {
        for (WordTable.Row row : WordTable.rows("duty-words")) {
            for (String language : List.of("en", "de")) {
                for (String phrase : row.optional("id").isPresent() ? row.words(language) : List.<String>of()) {
                    String first = phrase.replaceAll("\\|\\S+", "");
                    List<Set<String>> read = DutyWords.read(first);
                    assertTrue(
                            read.stream().anyMatch(r -> r.contains(row.text("id"))),
                            first + " does not name " + row.text("id") + " but " + read);
                }
            }
        }
    }

    @Test
    void aGeneralNameStandsForADutyOfItsKind() {
        assertTrue(DutyWords.due(Set.of("medical"), Set.of("medical/lead")));
        assertFalse(DutyWords.due(Set.of("medical/lead"), Set.of("medical/silica")));
        assertFalse(DutyWords.due(Set.of("air-test"), Set.of("training")));
    }
}
