package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fumewarden.model.Duty;

/**
 * Whether a unit waits for its thorough examination. Advice, cards and the due list all ask here.
 *
 * @param late that it is late, in words; empty when it is not, or when that cannot be said
 * @param lacking circumstances that nobody recorded and on which it hangs; those that move no day are not among them
 * @param due the last day in time, as the due list has it
 */
public record LateExamination(Optional<String> late, List<String> lacking, Optional<LocalDate> due) {
    private static final String EXAMINATION = "examination";

    /** What the due list says of the examination of a unit on a day, and what it would say if every open duty applied. */
    public static LateExamination of(Store store, List<Duty> duties, String id, LocalDate day) {
        List<Duty> examinations =
                duties.stream().filter(d -> d.doneBy().equals(EXAMINATION)).toList();
        DueList list = new DueList(store, examinations, day, Period.ZERO);
        DueReport said = list.of(id);
        Optional<Owing> late = first(said, Owing::late);
        boolean may = first(list.assuming().of(id), Owing::late).isPresent();
        return new LateExamination(
                late.map(o -> "Its thorough examination is " + o.words() + "."),
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
}
