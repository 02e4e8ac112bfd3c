package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Judges a check by its points and its measured flow, never more mildly than the person who did it. */
final class Flows {
    private Flows() {}

    static Result judged(
            Result claimed, List<Details.Point> points, Optional<BigDecimal> flow, Optional<BigDecimal> minimum) {
        boolean pointFailed = points.stream().anyMatch(p -> p.result() == Result.FAILED);
        return pointFailed || below(flow, minimum) ? Result.FAILED : claimed;
    }

    /** Why a check failed of which the figures tell; empty when they do not. */
    static String why(Result result, Optional<BigDecimal> flow, Optional<BigDecimal> minimum) {
        return result == Result.FAILED && below(flow, minimum)
                ? "flow " + flow.get().toPlainString() + " is below "
                        + minimum.get().toPlainString() + " L/min"
                : "";
    }

    /** Every reason of a failed check: the flow, the points that failed, what was remarked. */
    static String reasons(String flow, List<Details.Point> points, String remarks) {
        Stream<String> failed =
                points.stream().filter(p -> p.result() == Result.FAILED).map(Details.Point::words);
        return Stream.concat(Stream.concat(Stream.of(flow), failed), Stream.of(remarks))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining("; "));
    }

    static boolean below(Optional<BigDecimal> measured, Optional<BigDecimal> minimum) {
        return measured.isPresent() && minimum.isPresent() && measured.get().compareTo(minimum.get()) < 0;
    }
}
