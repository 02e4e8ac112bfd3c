package org.fumewarden.duties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Duty;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** EN 12021:2014: carbon monoxide in breathing air at most 5 ppm. Whatever the topic, air of a supply is held against it. */
class AirTopicsTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir
    Path folder;

    private Judging.Judged judged(Store store, String item, String topic, String monoxide) {
        return judging(store)
                .of(
                        "air-test",
                        item,
                        Map.of(
                                "result",
                                "passed",
                                "topic",
                                topic,
                                "carbon-monoxide",
                                monoxide,
                                "oxygen",
                                "20.9",
                                "carbon-dioxide",
                                "500",
                                "oil",
                                "0.5"));
    }

    private static DutyBook book() {
        return DutyBook.of(CodeBook.read(RuleFolder.shipped(), "gb"), DAY);
    }

    private static Judging judging(Store store) {
        return new Judging(store, AirTopicsTest::book);
    }

    private Store store() {
        Store store = Store.open(folder.resolve("log.db"));
        Item compressor = Forms.item("air-supply", Map.of("id", "C-1", "description", "compressor"), Map.of());
        store.append(Draft.registering(compressor, DAY, "stores"), NOW);
        return store;
    }

    @ParameterizedTest
    @ValueSource(strings = {"Breathing", "breathing air", "respirable", "workplace-unobtainium"})
    void aTopicOutsideTheListIsRefused(String topic) {
        try (Store store = store()) {
            StoreException refused = assertThrows(StoreException.class, () -> judged(store, "C-1", topic, "500"));
            assertTrue(refused.text().contains("breathing, certificate, workplace"), refused.text());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"breathing", "certificate", "workplace", "workplace-lead"})
    void figuresOfAnAirSupplyAreJudgedWhateverTheTopic(String topic) {
        try (Store store = store()) {
            Judging.Judged failed = judged(store, "C-1", topic, "5.1");
            assertEquals(Result.FAILED, failed.details().result());
            assertTrue(failed.says().contains("carbon monoxide 5.1 ppm is above 5 ppm"), failed.says());
            assertEquals(
                    "carbon monoxide 5.1 ppm is above 5 ppm", failed.details().whyFailed());
            assertEquals(
                    Result.PASSED, judged(store, "C-1", topic, "5").details().result());
        }
    }

    /** EN 12021 sets limits for oxygen, carbon monoxide, carbon dioxide and oil: without a figure for each nothing is judged. */
    @ParameterizedTest
    @ValueSource(strings = {"", "oxygen", "oxygen,carbon-monoxide", "oxygen,carbon-monoxide,carbon-dioxide"})
    void withoutEveryFigureTheTestIsOpen(String given) {
        Map<String, String> sound =
                Map.of("oxygen", "20.9", "carbon-monoxide", "2", "carbon-dioxide", "400", "oil", "0.1");
        Map<String, String> form = new HashMap<>(Map.of("result", "passed", "topic", "breathing"));
        sound.keySet().stream().filter(given::contains).forEach(f -> form.put(f, sound.get(f)));
        try (Store store = store()) {
            Judging.Judged open = judging(store).of("air-test", "C-1", form);
            assertEquals(Result.OPEN, open.details().result());
            assertTrue(open.says().contains("not judged: no figure for"), open.says());
            assertTrue(open.says().contains("oil"), open.says());
            store.append(new Draft("C-1", DAY, "Sanna Teller", open.details()), NOW);
            List<Duty> duties = book().duties();
            Owing owing = new DueList(store, duties, DAY, Period.ZERO)
                    .of("C-1").owings().stream()
                            .filter(o -> o.doneBy().equals("air-test/breathing"))
                            .findFirst()
                            .orElseThrow();
            assertEquals(DueStatus.BEFORE_FIRST_USE, owing.status());
            assertTrue(owing.note().contains("no figure for"), owing.note());
            form.putAll(sound);
            assertEquals(
                    Result.PASSED,
                    judging(store).of("air-test", "C-1", form).details().result());
        }
    }

    /** What failed once is not opened by a test that judged nothing. */
    @Test
    void anOpenTestOpensNoClosedSupply() {
        try (Store store = store()) {
            for (Map<String, String> form : List.of(
                    Map.of("result", "failed", "topic", "breathing", "carbon-monoxide", "50"),
                    Map.of("result", "passed", "topic", "breathing"))) {
                store.append(
                        new Draft(
                                "C-1",
                                DAY,
                                "s",
                                judging(store).of("air-test", "C-1", form).details()),
                        NOW);
                store.append(new Draft("C-1", DAY, "s", Forms.details("repair", Map.of("work", "new filter"))), NOW);
            }
            assertFalse(store.state("C-1").inService());
        }
    }

    @Test
    void theReasonStandsInTheStateOfTheSupply() {
        try (Store store = store()) {
            store.append(
                    new Draft(
                            "C-1",
                            DAY,
                            "Sanna Teller",
                            judged(store, "C-1", "breathing", "500").details()),
                    NOW);
            String because = store.state("C-1").because();
            assertTrue(because.contains("carbon monoxide 500 ppm is above 5 ppm"), because);
        }
    }

    @Test
    void airOfTheWorkPlaceIsNoBreathingAir() {
        try (Store store = store()) {
            assertEquals(
                    Result.PASSED,
                    judged(store, "SITE", "workplace", "20").details().result());
        }
    }
}
