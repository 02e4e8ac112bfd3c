package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Advice;

/** The person who wears it, and what for. Where nothing is required training, clearance and fit test stop nothing. */
record Wearer(Case facts, Levels levels, Floors floors) implements Family {

    @Override
    public List<String> objections(Advice advice) {
        return facts.offered(advice).stream()
                .flatMap(o -> barred(o).map(why -> o.id() + " is offered, but: " + why).stream())
                .toList();
    }

    private Optional<String> barred(Case.Offered offered) {
        boolean tight = offered.device().seal().equals("tight");
        boolean called = levels.callsForOne() || floors.least().compareTo(BigDecimal.ONE) > 0;
        boolean leakByChoice =
                !called && facts.is("facial-hair", "true") && facts.tables().in("no-bar-by-choice", "facial-hair");
        if (tight && !facts.is("facial-hair", "false") && !leakByChoice) {
            return Optional.of("facial hair or not known");
        }
        if (called && tight && !facts.is("fit-tested", "true")) {
            return Optional.of("not fit-tested or not known");
        }
        if (called && !facts.is("trained", "true")) {
            return Optional.of("not trained or not known");
        }
        if (called && !cleared(offered)) {
            return Optional.of("not cleared or not known");
        }
        if (facts.is("purpose", "fire-fighting") && !facts.in("for-fire", offered.id())) {
            return Optional.of("fire");
        }
        return facts.answer("purpose").filter("escape"::equals);
    }

    private boolean cleared(Case.Offered offered) {
        boolean lungsPull =
                List.of("negative", "demand").contains(offered.device().pressure());
        return facts.is("medically-cleared", "true") || facts.is("medically-cleared", "powered-only") && !lungsPull;
    }
}
