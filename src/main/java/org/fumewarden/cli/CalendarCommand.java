package org.fumewarden.cli;

import java.util.concurrent.Callable;
import org.fumewarden.report.upkeep.DutyCalendar;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes what is owed as a calendar. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description =
                "Writes what is owed as iCalendar (RFC 5545), one to-do for each; import it again to move the to-dos.",
        footer = {"", "Example:", "  fumewarden calendar --within P1Y > duties.ics"})
final class CalendarCommand implements Callable<Integer> {
    @Mixin
    private DueCommand.Question question = new DueCommand.Question();

    @Mixin
    private StoreOption store;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> {
            store.out()
                    .print(DutyCalendar.write(
                            question.answer(store), store.clock().instant()));
            return ExitCodes.COMPLETE;
        });
    }
}
