package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.upkeep.Closed;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Unsettled;

/** The list of what is owed. */
public final class DueSheet {
    private static final List<String> COLUMNS = List.of(
            "item",
            "kind",
            "name",
            "wearer",
            "status",
            "due",
            "days over",
            "last done",
            "deed",
            "duties",
            "clauses",
            "note");

    private DueSheet() {}

    public static String text(DueReport report) {
        return sheet(report).text();
    }

    public static String html(DueReport report) {
        return sheet(report).html();
    }

    public static String csv(DueReport report) {
        return CsvSheet.write(COLUMNS, rows(report));
    }

    private static Sheet sheet(DueReport report) {
        List<Sheet.Block> blocks = new ArrayList<>();
        if (!report.closed().isEmpty()) {
            blocks.add(new Sheet.Heading("Do not use"));
            blocks.add(new Sheet.Points(
                    report.closed().stream().map(DueSheet::closed).toList()));
        }
        blocks.add(new Sheet.Heading("Due on " + report.on() + ", overdue first"));
        if (report.owings().isEmpty()) {
            blocks.add(new Sheet.Paragraph("Nothing falls due in this time."));
        } else {
            blocks.add(new Sheet.Table(COLUMNS, rows(report)));
        }
        if (!report.doubts().isEmpty()) {
            blocks.add(new Sheet.Heading("The log itself looks wrong"));
            blocks.add(new Sheet.Points(report.doubts()));
        }
        if (!report.unsettled().isEmpty()) {
            blocks.add(new Sheet.Heading("Cannot be said until it is recorded"));
            blocks.add(new Sheet.Points(
                    report.unsettled().stream().map(DueSheet::unsettled).toList()));
        }
        blocks.add(new Sheet.Paragraph("There is no grace: the last day in time is the due day."));
        blocks.add(new Sheet.Paragraph(Closing.WORDS));
        return new Sheet("Checks, tests and records due", blocks);
    }

    private static String closed(Closed closed) {
        return closed.item() + " (" + closed.label() + ")"
                + closed.state().since().map(d -> " since " + d).orElse("") + ": "
                + closed.state().because();
    }

    static String unsettled(Unsettled open) {
        String fact = open.fact().indexOf(' ') < 0 ? open.fact().replace('-', ' ') : open.fact();
        return fact + " is not recorded for " + open.items() + " "
                + open.subject().key().replace('-', ' ') + (open.items() == 1 ? "" : "s") + " (such as "
                + open.example()
                + "): may be due: " + String.join(", ", open.duties());
    }

    private static List<List<String>> rows(DueReport report) {
        return report.owings().stream().map(DueSheet::row).toList();
    }

    private static List<String> row(Owing owing) {
        String assumed = owing.assumed().isEmpty()
                ? ""
                : "taken to apply, since not recorded: " + String.join(", ", owing.assumed());
        String note =
                owing.note().isEmpty() || assumed.isEmpty() ? owing.note() + assumed : owing.note() + "; " + assumed;
        return List.of(
                owing.item(),
                owing.kind().key(),
                owing.label(),
                owing.wearer().orElse(""),
                owing.status().words(),
                owing.due().map(LocalDate::toString).orElse(""),
                owing.daysOver() == 0 ? "" : String.valueOf(owing.daysOver()),
                last(owing),
                owing.doneBy().replace("/", ": "),
                owing.duties().stream().map(Duty::id).collect(Collectors.joining(", ")),
                owing.duties().stream().map(DueSheet::clause).distinct().collect(Collectors.joining("; ")),
                note);
    }

    private static String last(Owing owing) {
        String failed = owing.failed().map(d -> "failed on " + d).orElse("");
        return owing.last()
                .map(d -> d + (failed.isEmpty() ? "" : "; " + failed))
                .orElse(failed.isEmpty() ? "never" : "never passed; " + failed);
    }

    /** The clause with its force. */
    static String clause(Duty duty) {
        return duty.clause() + " (" + duty.force().words() + ")";
    }
}
