package org.fumewarden.cli;

import java.util.concurrent.Callable;
import org.fumewarden.report.upkeep.DutyCalendar;
import org.fumewarden.upkeep.DueReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes what is owed as a calendar. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description =
                "Writes the duties that are due as iCalendar (RFC 5545), one to-do for each; import it again to move the to-dos.",
        footer = {"", "Example:", "  fumewarden calendar --within P1Y > duties.ics"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:nothing is overdue, withdrawn or open",
            "1:a fault of the program or the disk",
            "2:wrong input; the message says where",
            "3:something is overdue, never done, withdrawn or not recorded"
        })
final class CalendarCommand implements Callable<Integer> {
    @Mixin
    private DueCommand.Question question = new DueCommand.Question();

    @Mixin
    private StoreOption store;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> {
            DueReport report = question.answer(store);
            store.out().print(DutyCalendar.write(report, store.clock().instant()));
            return report.settled() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
        });
    }
}
