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
import java.util.stream.Collectors;
import org.fumewarden.advice.Advisor;
import org.fumewarden.model.AssignedFactor;
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
        "SCBA positive pressure, self-contained-positive",
        "FFP3 NR D, ffp3",
        "FFP 3 R, ffp3",
        "half mask A1P3, half-mask-p3",
        "half mask A1 P3, half-mask-p3",
        "half mask A1B1E1K1-P3, half-mask-p3",
        "full mask with ABEK1 P3, full-mask-p3",
        "TH3 SL P, th3",
        "TH3 A1 P SL, th3",
        "airfed suit, airline-suit"
    })
    void aClassIsNamedByIdOrWords(String answer, String id) {
        List<DeviceClass> read =
                new ClassWords(BENCH.devices(), DeviceClass::name).read(answer).classes();
        assertEquals(List.of(id), read.stream().map(DeviceClass::id).toList(), answer);
    }

    @Test
    void aPoweredHoodIsThreeClassesUntilItsClassIsSaid() {
        assertEquals(
                Set.of("th1", "th2", "th3"),
                Set.copyOf(new ClassWords(BENCH.devices(), DeviceClass::name)
                        .read("powered hood").classes().stream()
                                .map(DeviceClass::id)
                                .toList()));
    }

    @Test
    void anAirlineHoodIsNoSuit() {
        assertTrue(new ClassWords(BENCH.devices(), DeviceClass::name)
                .read("airline hood").classes().stream().noneMatch(c -> c.id().equals("airline-suit")));
    }

    /** Series of 42 CFR 84 are no classes under EN, and the other way round. */
    @ParameterizedTest
    @CsvSource({
        "gb, N95, true",
        "gb, N 95, true",
        "gb, P100, true",
        "gb, half mask P100, true",
        "us, FFP3, true",
        "us, TH3, true",
        "us, half mask A1P3, true",
        "us, full mask P3, true",
        "au, FFP3, true",
        "gb, FFP3 NR D, false",
        "us, N95, false",
        "us, half mask P100, false"
    })
    void aMarkOfOtherRulesIsNamedAsSuch(String code, String answer, boolean foreign) {
        Set<String> factors = Advisor.shipped(code).base().rowsOn(Room.DAY).stream()
                .filter(AssignedFactor.class::isInstance)
                .map(f -> ((AssignedFactor) f).deviceClass())
                .collect(Collectors.toSet());
        List<DeviceClass> classes = Advisor.shipped(code).base().rowsOn(Room.DAY).stream()
                .filter(DeviceClass.class::isInstance)
                .map(DeviceClass.class::cast)
                .filter(d -> factors.contains(d.id()))
                .toList();
        assertEquals(
                foreign, new ClassWords(classes, DeviceClass::name).read(answer).foreign(), answer);
    }

    @Test
    void aFilterThatStandsBesideAClassIsRead() {
        ClassWords words = new ClassWords(BENCH.devices(), DeviceClass::name);
        assertEquals("a1p3", words.read("half mask A1P3").mark());
        assertEquals("th3 sl p", words.read("TH3 SL P").mark());
    }

    @ParameterizedTest
    @CsvSource({
        "monthly, P1M",
        "every month, P1M",
        "once a month, P1M",
        "3 months, P3M",
        "every three months, P3M",
        "quarterly, P3M",
        "vierteljährlich, P3M",
        "alle 3 Monate, P3M",
        "every 6 months, P6M",
        "half-yearly, P6M",
        "halbjährlich, P6M",
        "twice a year, P6M",
        "yearly, P1Y",
        "12 months, P12M",
        "einmal im Jahr, P1Y",
        "every other year, P2Y",
        "alle zwei Jahre, P2Y",
        "weekly, P7D",
        "each week, P7D",
        "täglich, P1D"
    })
    void aTimeIsReadAsPeopleSayIt(String answer, String period) {
        assertEquals(Optional.of(period), IntervalWords.read(answer));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "often", "0 months", "banana", "month of May", "every", "20"})
    void whatIsNoTimeIsNotRead(String answer) {
        assertEquals(Optional.empty(), IntervalWords.read(answer));
    }

    @ParameterizedTest
    @CsvSource({
        "train the wearer, training",
        "training, training",
        "Unterweisung, training",
        "fit test, fit-test",
        "face-fit test, fit-test",
        "Anpassungsüberprüfung, fit-test",
        "Dichtsitzpruefung, fit-test",
        "seal check, seal-check",
        "thorough examination, examination",
        "monthly thorough visual examination, examination",
        "check before use, before-use-check",
        "health surveillance, medical/surveillance",
        "air monitoring, air-test/workplace",
        "store it properly, storage",
        "blood lead, medical/lead-blood",
        "expiry, shelf-life",
        "filter date, shelf-life",
        "filter expiry date, shelf-life",
        "expiry date of the filters, shelf-life",
        "use-by date, shelf-life",
        "Verfallsdatum, shelf-life",
        "Filterhaltbarkeit, shelf-life",
        "Ablaufdatum der Filter, shelf-life"
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
            Advisor.shipped(code).base().rowsOn(Room.DAY).stream()
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
