package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Closed;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Unsettled;

/** The list of what is due. */
public final class DueSheet {
    private static final String FIT_TEST = "fit-test";

    private static final List<String> FIELDS = List.of(
            "item",
            "kind",
            "name",
            "wearer",
            "status",
            "due",
            "days over",
            "last done",
            "done-by",
            "duties",
            "clauses",
            "note");

    private static final List<String> COLUMNS = List.of(
            "item", "what", "kind", "name", "wearer", "status", "due", "days overdue", "last done", "clauses", "note");

    private final DueReport report;
    private final DutyBook book;
    private final Speech speech;

    private DueSheet(DueReport report, DutyBook book, Speech speech) {
        this.report = report;
        this.book = book;
        this.speech = speech;
    }

    public static String text(DueReport report, DutyBook book, Speech speech) {
        return new DueSheet(report, book, speech).sheet().text();
    }

    public static String html(DueReport report, DutyBook book, Speech speech) {
        return new DueSheet(report, book, speech).sheet().html();
    }

    /** For programs: keys and ids as the log and the tables have them. */
    public static String csv(DueReport report) {
        return CsvSheet.write(
                FIELDS, report.owings().stream().map(DueSheet::fields).toList());
    }

    private RegisterSheet sheet() {
        List<RegisterSheet.Block> blocks = new ArrayList<>();
        if (!report.closed().isEmpty()) {
            blocks.add(new RegisterSheet.Heading(speech.say("Do not use")));
            blocks.add(new RegisterSheet.Points(
                    report.closed().stream().map(this::closed).toList()));
        }
        blocks.add(new RegisterSheet.Heading(speech.say("Due on {0}, overdue first", speech.day(report.on()))));
        if (report.owings().isEmpty()) {
            blocks.add(new RegisterSheet.Paragraph(speech.say(
                    report.origin().isEmpty()
                            ? "The register holds nothing yet, so nothing can be said to be due."
                            : "Nothing falls due in this time.")));
        } else {
            blocks.add(new RegisterSheet.Table(
                    COLUMNS.stream().map(speech::say).toList(),
                    report.owings().stream().map(this::row).toList()));
        }
        if (!report.doubts().isEmpty()) {
            blocks.add(new RegisterSheet.Heading(speech.say("The log itself looks wrong")));
            blocks.add(new RegisterSheet.Points(
                    report.doubts().stream().map(speech::told).toList()));
        }
        if (!report.unsettled().isEmpty()) {
            blocks.add(
                    new RegisterSheet.Heading(speech.say("Record these facts: until then no one can say what is due")));
            Map<List<Object>, List<Unsettled>> alike = report.unsettled().stream()
                    .collect(Collectors.groupingBy(
                            u -> List.of(u.subject(), u.ids(), deeds(u, book, speech)),
                            LinkedHashMap::new,
                            Collectors.toList()));
            blocks.add(new RegisterSheet.Points(
                    alike.values().stream().map(this::unsettled).toList()));
        }
        blocks.add(new RegisterSheet.Paragraph(speech.say("There is no period of grace. Do it by the due date.")));
        blocks.add(new RegisterSheet.Paragraph(speech.say(Closing.WORDS)));
        return new RegisterSheet(
                speech.say("Checks, tests and records due"),
                blocks,
                speech.words().language());
    }

    private String closed(Closed closed) {
        String since = closed.state()
                .since()
                .map(d -> " " + speech.say("since {0}", speech.day(d)))
                .orElse("");
        return closed.item() + " (" + closed.label() + ")" + since + ". "
                + speech.told(closed.state().because());
    }

    /** Facts that leave the same open of the same items are told together. */
    private String unsettled(List<Unsettled> alike) {
        String facts = alike.stream().map(u -> fact(u.fact(), book, speech)).collect(Collectors.joining("; "));
        return unsettled(alike.get(0), facts, book, speech);
    }

    private static String deeds(Unsettled open, DutyBook book, Speech speech) {
        return book.duties().stream()
                .filter(d -> open.duties().contains(d.id()))
                .map(d -> new DutyTerms(speech).deed(d.doneBy(), List.of(open.subject())))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** What may be due, and the fact that decides it. */
    static String unsettled(Unsettled open, DutyBook book, Speech speech) {
        return unsettled(open, fact(open.fact(), book, speech), book, speech);
    }

    private static String unsettled(Unsettled open, String facts, DutyBook book, Speech speech) {
        String subject = open.subject().key();
        String item = StringUtils.removeEnd(subject, "-mask");
        String kind = speech.named("kind." + item, item);
        String of = open.items() == 1
                ? open.example() + " (" + kind + ")"
                : speech.say("{0} items of the kind {1}, such as {2}", open.items(), kind, open.example());
        return speech.say(
                "{0}: not recorded for {1}. May be due: {2}.",
                StringUtils.capitalize(facts), of, deeds(open, book, speech));
    }

    /** A circumstance in words. */
    static String fact(String fact, DutyBook book, Speech speech) {
        return book.catalogue("circumstances").stream()
                .filter(t -> t.id().equals(fact))
                .map(t -> speech.told(t.name()))
                .findFirst()
                .orElse(fact.indexOf(' ') < 0 ? speech.told(fact.replace('-', ' ')) : fact);
    }

    /** What is to be done; of a fit test, in which mask. */
    static String deed(Owing owing, Speech speech) {
        DutyTerms terms = new DutyTerms(speech);
        String mask = StringUtils.substringAfter(owing.doneBy(), FIT_TEST + "/");
        return mask.isEmpty()
                ? terms.deed(owing.doneBy(), List.of(owing.kind()))
                : terms.deed(FIT_TEST, List.of()) + ": " + mask;
    }

    private List<String> row(Owing owing) {
        return List.of(
                owing.item(),
                deed(owing, speech),
                speech.named("kind." + owing.kind().key(), owing.kind().key()),
                owing.label(),
                owing.wearer().orElse(""),
                speech.say(owing.status().words()),
                owing.due().map(speech::day).orElse(""),
                owing.daysOver() == 0 ? "" : String.valueOf(owing.daysOver()),
                last(owing, speech, speech::day),
                owing.duties().stream().map(d -> clause(d, speech)).distinct().collect(Collectors.joining("; ")),
                note(owing));
    }

    private static List<String> fields(Owing owing) {
        return List.of(
                owing.item(),
                owing.kind().key(),
                owing.label(),
                owing.wearer().orElse(""),
                owing.status().words(),
                owing.due().map(LocalDate::toString).orElse(""),
                owing.daysOver() == 0 ? "" : String.valueOf(owing.daysOver()),
                last(owing, Speech.ENGLISH, LocalDate::toString),
                owing.doneBy(),
                owing.duties().stream().map(Duty::id).collect(Collectors.joining(", ")),
                owing.duties().stream()
                        .map(d -> clause(d, Speech.ENGLISH))
                        .distinct()
                        .collect(Collectors.joining("; ")),
                owing.note() + (owing.assumed().isEmpty() ? "" : " assumed: " + String.join(", ", owing.assumed())));
    }

    private String note(Owing owing) {
        String assumed = owing.assumed().isEmpty()
                ? ""
                : speech.say(
                        "The register does not state this, so the duty is taken to apply: {0}.",
                        owing.assumed().stream().map(f -> fact(f, book, speech)).collect(Collectors.joining(", ")));
        String note = StringUtils.capitalize(owing.note());
        String ended = note.isEmpty() || note.endsWith(".") ? note : note + ".";
        return (speech.told(ended) + " " + assumed).strip();
    }

    private static String last(Owing owing, Speech speech, Function<LocalDate, String> day) {
        String failed = owing.failed()
                .map(d -> speech.say("failed on {0}", day.apply(d)))
                .orElse("");
        return owing.last()
                .map(d -> day.apply(d) + (failed.isEmpty() ? "" : "; " + failed))
                .orElse(failed.isEmpty() ? speech.say("never") : speech.say("never passed") + "; " + failed);
    }

    /** The clause with its force. */
    static String clause(Duty duty, Speech speech) {
        return speech.cited(duty.citation().clause()) + " ("
                + speech.named("force." + duty.force().key(), duty.force().words()) + ")";
    }
}
