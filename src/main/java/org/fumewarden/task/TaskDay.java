package org.fumewarden.task;

import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.codes.CodeSummary;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;

/** The day whose rules hold: no table says anything about days outside the time in which rows can be in force. */
final class TaskDay {
    private static final String ON = "on";
    private static final LocalDate LAST = CodeSummary.NEVER.minusDays(1);

    private TaskDay() {}

    /** The day given beside the file, or else that of the file; complains when there is none, or no table could speak of it. */
    static LocalDate read(Located root, Optional<LocalDate> beside) {
        Optional<Located> told = Optional.ofNullable(root.entries().get(ON));
        Optional<LocalDate> day = beside.or(() -> told.flatMap(Located::day));
        if (day.isEmpty()) {
            if (told.isEmpty()) {
                root.complain(
                        Fault.DAY,
                        "lacks \"on\", the day whose rules hold.",
                        "add a line \"on: 2026-03-02\", or give --on.");
            }
            return LocalDate.EPOCH;
        }
        if (day.get().isBefore(CodeSummary.ALWAYS) || day.get().isAfter(LAST)) {
            boolean option = beside.isPresent();
            told.filter(cell -> !option)
                    .orElse(root)
                    .complain(
                            (option ? "--on is " : "is ") + day.get() + ", a day of which no table can speak.",
                            "give a day between " + CodeSummary.ALWAYS + " and " + LAST + ", such as 2026-03-02.");
            return LocalDate.EPOCH;
        }
        return day.get();
    }
}
