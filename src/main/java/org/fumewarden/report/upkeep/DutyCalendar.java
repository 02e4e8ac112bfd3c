package org.fumewarden.report.upkeep;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Due;
import net.fortuna.ical4j.model.property.Priority;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Owing;

/**
 * The list of what is owed as an iCalendar file (RFC 5545): one to-do for each rolling duty.
 *
 * <p>The to-do carries the one day that counts now and no recurrence, since the next day depends on when the deed is done. Its
 * identifier stays the same, so that a new export moves the to-do instead of adding one.
 */
public final class DutyCalendar {
    private static final Duration WARNING = Duration.ofDays(-7);
    private static final Set<DueStatus> URGENTLY =
            Set.of(DueStatus.OVERDUE, DueStatus.BEFORE_FIRST_USE, DueStatus.NOT_IN_SERVICE);
    private static final int URGENT = 1;
    private static final int ORDINARY = 5;

    private DutyCalendar() {}

    /**
     * The calendar.
     *
     * @param stamp moment of the export
     */
    public static String write(DueReport report, DutyBook book, Speech speech, Instant stamp) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Fumewarden//Upkeep//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        for (Owing owing : report.owings()) {
            calendar.add(todo(owing, report, speech, stamp));
        }
        Set<String> told = report.owings().stream().map(Owing::item).collect(Collectors.toSet());
        report.closed().stream()
                .filter(c -> !told.contains(c.item()))
                .forEach(c -> calendar.add(undated(
                        report,
                        stamp,
                        "closed\n" + c.item(),
                        speech.say("DO NOT USE.") + " " + c.item() + " (" + c.label() + ")",
                        speech.told(c.state().because()),
                        speech)));
        report.unsettled()
                .forEach(u -> calendar.add(undated(
                        report,
                        stamp,
                        "open\n" + u.subject() + "\n" + u.fact(),
                        speech.say(
                                "Record this: {0}. Until then no due date can be given.",
                                DueSheet.fact(u.fact(), book, speech)),
                        DueSheet.unsettled(u, book, speech),
                        speech)));
        report.doubts()
                .forEach(d -> calendar.add(undated(
                        report,
                        stamp,
                        "doubt\n" + d,
                        speech.say("The log itself looks wrong"),
                        speech.told(d),
                        speech)));
        return Folding.fold(calendar.toString());
    }

    /** What is to be done before any day can be told. */
    private static VToDo undated(
            DueReport report, Instant stamp, String key, String summary, String description, Speech speech) {
        VToDo todo = new VToDo(false);
        todo.add(new Uid(identifier(report.origin() + "\n" + key)));
        todo.add(new DtStamp(stamp));
        todo.add(new Summary(clean(summary)));
        todo.add(new Description(clean(description + "\n" + speech.say(Closing.WORDS))));
        todo.add(new Priority(URGENT));
        todo.add(new Status(Status.VALUE_NEEDS_ACTION));
        return todo;
    }

    private static VToDo todo(Owing owing, DueReport report, Speech speech, Instant stamp) {
        VToDo todo = new VToDo(false);
        todo.add(new Uid(identifier(owing, report.origin())));
        todo.add(new DtStamp(stamp));
        todo.add(new Summary(clean(barred(owing, speech) + owing.item() + ": " + DueSheet.deed(owing, speech) + " ("
                + owing.label() + ")")));
        todo.add(new Due<>(owing.due().orElse(report.on())));
        todo.add(new Description(clean(description(owing, speech))));
        todo.add(new Categories(
                clean(speech.named("kind." + owing.kind().key(), owing.kind().key()))));
        todo.add(new Priority(URGENTLY.contains(owing.status()) ? URGENT : ORDINARY));
        todo.add(new Status(Status.VALUE_NEEDS_ACTION));
        todo.add(alarm(owing, speech));
        return todo;
    }

    private static String barred(Owing owing, Speech speech) {
        return owing.status() == DueStatus.NOT_IN_SERVICE ? speech.say("DO NOT USE.") + " " : "";
    }

    private static VAlarm alarm(Owing owing, Speech speech) {
        VAlarm alarm = new VAlarm();
        Trigger trigger = new Trigger(WARNING);
        trigger.add(Related.END);
        alarm.add(trigger);
        alarm.add(ImmutableAction.DISPLAY);
        alarm.add(new Description(clean(owing.item() + ": " + DueSheet.deed(owing, speech))));
        return alarm;
    }

    private static String description(Owing owing, Speech speech) {
        String duties = owing.duties().stream()
                .map(d -> speech.told(d.what()) + " [" + DueSheet.clause(d, speech) + "]")
                .collect(Collectors.joining("\n"));
        DutyTerms terms = new DutyTerms(speech);
        String who = owing.duties().stream()
                .map(Duty::who)
                .distinct()
                .map(terms::who)
                .collect(Collectors.joining(", "));
        String note = speech.told(owing.note());
        boolean closed = owing.status() == DueStatus.NOT_IN_SERVICE;
        List<String> lines = new ArrayList<>();
        lines.add(closed ? speech.say("DO NOT USE.") + " " + note : "");
        lines.add(speech.say(owing.status().words()));
        lines.add(duties);
        lines.add(speech.say("By: {0}", who));
        lines.add(closed ? "" : note);
        lines.add(speech.say(Closing.WORDS));
        return lines.stream().filter(l -> !l.isBlank()).collect(Collectors.joining("\n"));
    }

    /** RFC 5545 allows no control characters in text apart from the line break. */
    private static String clean(String text) {
        return text.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ");
    }

    /** The same for the same deed of the same store, and another in every other store: two sites fit into one calendar. */
    private static String identifier(Owing owing, String origin) {
        return identifier(origin + "\n" + owing.kind().key() + "\n" + owing.item() + "\n" + owing.doneBy());
    }

    private static String identifier(String key) {
        return UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)) + "@fumewarden.invalid";
    }
}
