package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Whether a unit waits for its thorough examination. Advice, cards and the due list all ask here.
 *
 * @param late that it is late, in words; empty when it is not, or when that cannot be said
 * @param lacking circumstances that nobody recorded and on which it hangs; those that move no day are not among them
 * @param due the last day in time, as the due list has it
 */
public record LateExamination(Optional<String> late, List<String> lacking, Optional<LocalDate> due) {
    private static final String EXAMINATION = "examination";

    private static final Set<DueStatus> LATE = Set.of(DueStatus.OVERDUE, DueStatus.BEFORE_FIRST_USE);

    /** What the due list says of the examination of a unit on a day, and what it would say if every open duty applied. */
    public static LateExamination of(Store store, List<Duty> duties, String id, LocalDate day) {
        List<Duty> examinations =
                duties.stream().filter(d -> d.doneBy().equals(EXAMINATION)).toList();
        DueList list = new DueList(store, examinations, day, Period.ZERO);
        DueReport said = list.of(id);
        Optional<Owing> late = first(said, o -> LATE.contains(o.status()));
        boolean may =
                first(list.assuming().of(id), o -> LATE.contains(o.status())).isPresent();
        return new LateExamination(
                late.map(LateExamination::words),
                late.isEmpty() && may
                        ? said.unsettled().stream()
                                .map(Unsettled::fact)
                                .distinct()
                                .toList()
                        : List.of(),
                first(said, o -> true).flatMap(Owing::due));
    }

    /** Why nobody may rely on its examination, in words; empty when one is in time or none is owed. */
    public Optional<String> against() {
        return late.or(() -> lacking.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Whether its thorough examination is overdue cannot be said. The register does not state: "
                                + String.join(", ", lacking).replace('-', ' ') + "."));
    }

    private static Optional<Owing> first(DueReport report, Predicate<Owing> wanted) {
        return report.owings().stream()
                .filter(o -> o.doneBy().equals(EXAMINATION) && wanted.test(o))
                .findFirst();
    }

    private static String words(Owing owing) {
        return "Its thorough examination is " + owing.status().words()
                + owing.due().map(d -> ". It was due on " + d).orElse("")
                + (owing.note().isEmpty() ? "" : ", " + owing.note()) + ".";
    }
}
