package org.fumewarden.cli;

import java.util.concurrent.Callable;
import org.fumewarden.report.upkeep.DutyCalendar;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes what is due as a calendar. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description =
                "Writes the duties that are due as iCalendar (RFC 5545), one to-do for each; import it again to move the to-dos.",
        footer = {"", "Example:", "  fumewarden calendar --within \"1 year\" > duties.ics"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:nothing is overdue, out of use or open",
            "1:a fault of the program or the disk",
            "2:wrong input; the message says where",
            "3:something is overdue, never done, out of use or not recorded"
        })
final class CalendarCommand implements Callable<Integer> {
    @Mixin
    private DueCommand.Question question = new DueCommand.Question();

    @Mixin
    private StoreOption store;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> {
            DueCommand.Question.Answer said = question.answer(store);
            store.out()
                    .print(DutyCalendar.write(
                            said.report(),
                            said.book(),
                            said.speech(),
                            store.clock().instant()));
            return said.report().settled() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
        });
    }
}
