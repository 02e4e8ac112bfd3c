package org.fumewarden.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fumewarden.Extent;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Suitability;
import org.fumewarden.model.Lever;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RemediesTest {
    @Test
    @Tag("ci")
    void everyRemedyWorksAndNoProperPartOfItDoesOverTheTours() throws IOException {
        int checked = 0;
        for (Path tour : Benches.tours()) {
            Bench bench = Benches.of(tour);
            Remedies remedies = new Remedies(bench);
            List<String> barred = bench.advise().respirators().stream()
                    .filter(r -> r.verdict() == Suitability.BARRED || r.verdict() == Suitability.UNDECIDED)
                    .map(Respirator::deviceClass)
                    .limit(2)
                    .toList();
            for (String deviceClass : barred) {
                for (List<Lever> set : remedies.forClass(deviceClass)) {
                    assertTrue(remedies.serves(set, deviceClass), tour + " " + set);
                    for (int size = 0; size < set.size(); size++) {
                        for (List<Lever> part : Remedies.subsets(set, size)) {
                            assertFalse(remedies.serves(part, deviceClass), tour + " " + part);
                        }
                    }
                    checked++;
                }
            }
        }
        assertTrue(checked > 0, "no remedy was found in any tour");
    }

    /** Seeded, so that a failure can be repeated; each task has some of these obstacles and not others. */
    @Test
    @Tag("ci")
    void everyRemedyOfRandomTasksWorksAndIsMinimal() {
        List<Map.Entry<String, String>> obstacles = List.of(
                Map.entry("wearer.facial-hair", "true"),
                Map.entry("wearer.fit-tested", "false"),
                Map.entry("wearer.spectacles", "true"),
                Map.entry("wearer.medically-cleared", "powered-only"),
                Map.entry("task.place", "confined-space"),
                Map.entry("task.wear-time", "PT3H"),
                Map.entry("atmosphere.eye-irritation", "true"));
        java.util.Random random = new java.util.Random(20260302);
        int checked = 0;
        for (int task = 0; task < Extent.of(3, 3, 24); task++) {
            Map<String, String> changes = new java.util.HashMap<>();
            obstacles.stream().filter(o -> random.nextBoolean()).forEach(o -> changes.put(o.getKey(), o.getValue()));
            Remedies remedies = new Remedies(Benches.of(Benches.BRACKETS, changes));
            for (String deviceClass : List.of("ffp3", "full-mask-p3", "tm3")) {
                for (List<Lever> set : remedies.forClass(deviceClass)) {
                    assertTrue(remedies.serves(set, deviceClass), changes + " " + set);
                    for (int size = 0; size < set.size(); size++) {
                        for (List<Lever> part : Remedies.subsets(set, size)) {
                            assertFalse(remedies.serves(part, deviceClass), changes + " " + part);
                        }
                    }
                    checked++;
                }
            }
        }
        assertTrue(checked > 3, "only " + checked + " remedies were found");
    }

    @Test
    void shorterWearMakesAFilteringFacepieceServeOnTheBracketBench() {
        List<List<Lever>> sets = new Remedies(Benches.of(Benches.BRACKETS)).forClass("ffp3");
        assertEquals(
                List.of(List.of("shorter-wear")),
                sets.stream().map(s -> s.stream().map(Lever::id).toList()).toList());
    }

    @Test
    @Tag("ci")
    void whereNoSetHelpsNoneIsOffered() {
        Bench bench = Benches.of(Benches.BRACKETS, Map.of("exposures.manganese-respirable.twa", "90 mg/m3"));
        assertEquals(List.of(), new Remedies(bench).forClass("th3"));
    }
}
