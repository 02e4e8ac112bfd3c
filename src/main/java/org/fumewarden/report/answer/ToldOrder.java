package org.fumewarden.report.answer;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;

/** The answers that the page tells, in its order. */
final class ToldOrder {
    /** Questions whose answers name the job, in the order in which they are told. */
    static final List<String> JOB = List.of(
            "process",
            "base-metal",
            "coating",
            "coating-stripped",
            "filler",
            "beryllium-share",
            "beryllium-objective-data",
            "place",
            "extraction",
            "ventilation",
            "time-on-task",
            "shift",
            "oxygen",
            "altitude",
            "vessel",
            "vessel-held",
            "vessel-cleaned",
            "vessel-water-filled",
            "gas-test",
            "gas-test-instrument",
            "gas-test-time",
            "escape-time");

    static final List<String> WEARER =
            List.of("facial-hair", "spectacles", "fit-tested", "medically-cleared", "trained");
    static final List<String> KIT = List.of(
            "unit",
            "class-in-hand",
            "measured-flow",
            "minimum-design-flow",
            "spark-arrestor",
            "filter-mark",
            "filter-expiry",
            "unit-withdrawn",
            "air-source",
            "compressor-oil-lubricated");

    /** Figures for reckoning how long the unit lasts, and what is worked out from them: they stand in the annex. */
    private static final Set<String> RECKONED = Set.of(
            "filter-expired",
            "filter-opened-long",
            "filter-carbon",
            "carbon-density",
            "carbon-area",
            "filter-clean-pressure",
            "largest-pressure",
            "filter-area",
            "pre-filter-share",
            "pre-filter-holds",
            "filter-pressure-end",
            "filter-point-end",
            "battery-energy",
            "battery-too-short",
            "charge-time",
            "charge-in-breaks");

    private ToldOrder() {}

    /** What is asked of the kit as it lies there, what is looked for first in front. */
    static List<String> kit(Vocabulary vocabulary) {
        Stream<String> more = vocabulary.questions().stream()
                .filter(q -> q.path().startsWith("kit.") && !JOB.contains(q.id()) && !RECKONED.contains(q.id()))
                .map(Question::id);
        return Stream.concat(KIT.stream(), more).distinct().toList();
    }
}
