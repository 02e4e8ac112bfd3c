package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.InputException;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Test;

/** The checks before use, in the order of the card before-use.yaml, with faults thrown in. */
class HandsOnTest {
    private static Round round(String kind, long seed) {
        return HandsOn.round(Advisor.shipped("gb").base().book(), Room.DAY, kind, Words.in("en"), seed);
    }

    private static Round round(long seed) {
        return round("powered-mask", seed);
    }

    private static List<String> order(String kind) {
        return round(kind, 1).items().stream()
                .filter(i -> i.kind().equals("order"))
                .map(i -> i.rightChoice().id())
                .toList();
    }

    /** A loose hood has no exhalation valve and no face seal: EN 12941 has hoods apart from the masks of EN 12942 (from memory). */
    @Test
    void aHoodIsNotAskedForWhatItDoesNotHave() {
        assertFalse(order("powered-hood").contains("pu-valves"));
        assertTrue(order("powered-mask").contains("pu-valves"));
        assertFalse(order("airline-hood").stream()
                .anyMatch(List.of("pu-battery", "pu-filter-right", "pu-valves")::contains));
        assertTrue(order("airline-hood").contains("pa-air-in-date"));
        for (String kind : List.of("powered-hood", "airline-hood")) {
            for (long seed = 0; seed < 20; seed++) {
                for (RoundItem item : round(kind, seed).items()) {
                    String all = item.ask() + item.choices();
                    assertFalse(all.contains("valve") || all.contains("shaven") || all.contains("seal"), all);
                }
            }
        }
    }

    @Test
    void anUnknownKindIsNamed() {
        assertTrue(assertThrows(InputException.class, () -> round("powered", 1))
                .getMessage()
                .contains("powered-hood"));
    }

    @Test
    void theOrderIsThatOfTheCard() {
        List<String> card = Advisor.shipped("gb").base().rowsOn(Room.DAY).stream()
                .filter(Term.class::isInstance)
                .map(Term.class::cast)
                .filter(t -> t.catalogue().equals("before-use-powered"))
                .map(Term::id)
                .toList();
        List<String> asked = round(1).items().stream()
                .filter(i -> i.kind().equals("order"))
                .map(i -> i.rightChoice().id())
                .toList();
        assertEquals(card.subList(0, card.size() - 1), asked, "the last follows by itself");
    }

    @Test
    void threeFaultsAreThrownInAndAnAlarmInTheWork() {
        Set<String> seen = new HashSet<>();
        for (long seed = 0; seed < 40; seed++) {
            List<RoundItem> faults = round(seed).items().stream()
                    .filter(i -> i.kind().equals("fault"))
                    .toList();
            assertEquals(4, faults.size());
            assertEquals("leave", faults.get(3).rightChoice().id(), "an alarm in the work");
            faults.forEach(f -> seen.add(f.ask()));
            RoundMakerTest.oneRightAnswer(round(HandsOn.kinds().get((int) seed % 3), seed));
        }
        for (String fault : List.of(
                "flow indicator stays below",
                "pre-filter sits behind",
                "hose is cracked",
                "last point",
                "flow alarm sounds")) {
            assertTrue(seen.stream().anyMatch(s -> s.contains(fault)), fault);
        }
    }

    @Test
    void jumpingAheadIsWrongWithTheCardBesideIt() {
        RoundItem first = round(1).items().get(0);
        RoundItem.Choice later = first.choices().stream()
                .filter(c -> !first.pick(c).right())
                .findFirst()
                .orElseThrow();
        Mark mark = first.pick(later);
        assertEquals("out-of-order", mark.mistake().orElseThrow().id());
        assertTrue(mark.because().contains("clean-shaven"), mark.because());
        assertEquals("COSHH reg 12; INDG479", mark.clause(), "the clauses of this code alone");
    }

    @Test
    void everyCheckOfTheCardHasItsShortWords() {
        round(1).items().forEach(i -> assertTrue(i.choices().size() >= 2, i.ask()));
    }
}
