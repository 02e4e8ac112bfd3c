package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
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
        return TextForm.write(sheet(report));
    }

    public static String html(DueReport report) {
        return HtmlForm.write(sheet(report));
    }

    public static String csv(DueReport report) {
        return CsvSheet.write(COLUMNS, rows(report));
    }

    private static Sheet sheet(DueReport report) {
        PaperParts parts = new PaperParts();
        parts.head("Do not use").points(report.closed().stream().map(DueSheet::closed).toList());
        parts.head("Due on " + report.on() + ", overdue first");
        if (report.owings().isEmpty()) {
            parts.says("Nothing falls due in this time.");
        } else {
            parts.table(COLUMNS, rows(report));
        }
        parts.head("The log itself looks wrong").points(report.doubts());
        parts.head("Cannot be said until it is recorded")
                .points(report.unsettled().stream().map(DueSheet::unsettled).toList());
        return parts.sheet(
                "list", "Checks, tests and records due", "There is no grace: the last day in time is the due day.");
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
