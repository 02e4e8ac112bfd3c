package org.fumewarden.report.answer;

import java.util.Optional;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.assessment.WholeAndPart;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.model.Account;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Settlement;

/** How the level of a row is known, as a key of the words of the page. */
record KnownBy(Advice advice) {
    static final String ASSUMED = "assumed";
    private static final String STATED = "stated";
    private static final Set<String> SAMPLED = Set.of("samples", "studies");

    /** How the level is known; one that the code tells people to assume is no measurement. */
    String of(Account account) {
        return advice.trail().all(Ratio.class).stream()
                .filter(r -> r.agent().equals(account.agent())
                        && r.averaging().key().equals(account.averaging())
                        && account.level()
                                .filter(l -> l.compareTo(r.level()) == 0)
                                .isPresent()
                        && (!r.basis().equals(STATED) || account.against().equals(Optional.of(r.limit()))))
                .map(KnownBy::origin)
                .filter(o -> !o.isEmpty() && account.kind() != Settlement.BORROWED)
                .findFirst()
                .map(o -> SAMPLED.contains(o) && few(account) ? "few" : o)
                .orElse(account.kind().key());
    }

    /** True where few samples count for more than they show. */
    private boolean few(Account account) {
        return advice.trail().all(Caution.class).contains(new Caution(account.agent() + "-too-few"));
    }

    /** Where a level comes from that nobody measured as it stands; empty for the others. */
    private static String origin(Ratio ratio) {
        if (Set.of(ASSUMED, Ratio.OF_THE_WHOLE, STATED).contains(ratio.basis())) {
            return ratio.basis();
        }
        if (ratio.statistic().startsWith(Statistic.POSTERIOR.words())) {
            return "studies";
        }
        if (ratio.statistic().equals(WholeAndPart.BY_THE_WHOLE)) {
            return "capped";
        }
        return ratio.basis().equals("measured")
                        && !Set.of(Exposure.AS_GIVEN, Exposure.COUNTED_OVER).contains(ratio.statistic())
                ? ratio.statistic().equals(Exposure.NOT_DETECTED) ? "not-detected" : "samples"
                : "";
    }
}
