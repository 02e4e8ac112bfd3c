package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Test;

/** The checks before use, in the order of the card before-use.yaml, with faults thrown in. */
class HandsOnTest {
    private static Round round(long seed) {
        return HandsOn.round(Room.advisor("gb").base().book(), Words.in("en"), seed);
    }

    @Test
    void theOrderIsThatOfTheCard() {
        List<String> card = Room.advisor("gb").base().rowsOn(Room.DAY).stream()
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
            List<Item> faults = round(seed).items().stream()
                    .filter(i -> i.kind().equals("fault"))
                    .toList();
            assertEquals(4, faults.size());
            assertEquals("leave", faults.get(3).rightChoice().id(), "an alarm in the work");
            faults.forEach(f -> seen.add(f.ask()));
            RoundMakerTest.oneRightAnswer(round(seed));
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
        Item first = round(1).items().get(0);
        Item.Choice later = first.choices().stream()
                .filter(c -> !first.pick(c).right())
                .findFirst()
                .orElseThrow();
        Mark mark = first.pick(later);
        assertEquals("out-of-order", mark.mistake().orElseThrow().id());
        assertTrue(mark.because().contains("clean-shaven"), mark.because());
        assertTrue(mark.clause().contains("1910.134(e)"), mark.clause());
    }

    @Test
    void everyCheckOfTheCardHasItsShortWords() {
        round(1).items().forEach(i -> assertTrue(i.choices().size() >= 2, i.ask()));
    }
}
