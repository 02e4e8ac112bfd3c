package org.fumewarden.report.upkeep;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
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
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Owing;

/**
 * The list of what is owed as an iCalendar file (RFC 5545): one to-do for each rolling duty.
 *
 * <p>The to-do carries the one day that counts now and no recurrence, since the next day depends on when the deed is done. Its
 * identifier stays the same, so that a new export moves the to-do instead of adding one.
 */
public final class DutyCalendar {
    private static final Duration WARNING = Duration.ofDays(-7);
    private static final String BARRED = "DO NOT USE ";
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
    public static String write(DueReport report, Instant stamp) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Fumewarden//Upkeep//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        for (Owing owing : report.owings()) {
            calendar.add(todo(owing, report, stamp));
        }
        Set<String> told = report.owings().stream().map(Owing::item).collect(Collectors.toSet());
        report.closed().stream()
                .filter(c -> !told.contains(c.item()))
                .forEach(c -> calendar.add(undated(
                        report,
                        stamp,
                        "closed\n" + c.item(),
                        BARRED + c.item() + " (" + c.label() + ")",
                        c.state().because())));
        report.unsettled()
                .forEach(u -> calendar.add(undated(
                        report,
                        stamp,
                        "open\n" + u.subject() + "\n" + u.fact(),
                        "Record " + u.fact().replace('-', ' ') + ": without it no day can be said",
                        DueSheet.unsettled(u))));
        report.doubts()
                .forEach(d -> calendar.add(undated(report, stamp, "doubt\n" + d, "The log itself looks wrong", d)));
        return Folding.fold(calendar.toString());
    }

    /** What is to be done before any day can be told. */
    private static VToDo undated(DueReport report, Instant stamp, String key, String summary, String description) {
        VToDo todo = new VToDo(false);
        todo.add(new Uid(identifier(report.origin() + "\n" + key)));
        todo.add(new DtStamp(stamp));
        todo.add(new Summary(clean(summary)));
        todo.add(new Description(clean(description + "\n" + Closing.WORDS)));
        todo.add(new Priority(URGENT));
        todo.add(new Status(Status.VALUE_NEEDS_ACTION));
        return todo;
    }

    private static VToDo todo(Owing owing, DueReport report, Instant stamp) {
        VToDo todo = new VToDo(false);
        todo.add(new Uid(identifier(owing, report.origin())));
        todo.add(new DtStamp(stamp));
        todo.add(new Summary(clean(
                barred(owing) + owing.item() + ": " + owing.doneBy().replace('/', ' ') + " (" + owing.label() + ")")));
        todo.add(new Due<>(owing.due().orElse(report.on())));
        todo.add(new Description(clean(description(owing))));
        todo.add(new Categories(owing.kind().key()));
        todo.add(new Priority(URGENTLY.contains(owing.status()) ? URGENT : ORDINARY));
        todo.add(new Status(Status.VALUE_NEEDS_ACTION));
        todo.add(alarm(owing));
        return todo;
    }

    private static String barred(Owing owing) {
        return owing.status() == DueStatus.NOT_IN_SERVICE ? BARRED : "";
    }

    private static VAlarm alarm(Owing owing) {
        VAlarm alarm = new VAlarm();
        Trigger trigger = new Trigger(WARNING);
        trigger.add(Related.END);
        alarm.add(trigger);
        alarm.add(ImmutableAction.DISPLAY);
        alarm.add(new Description(clean(owing.item() + ": " + owing.doneBy().replace('/', ' '))));
        return alarm;
    }

    private static String description(Owing owing) {
        String duties = owing.duties().stream()
                .map(d -> d.what() + " [" + DueSheet.clause(d) + "]")
                .collect(Collectors.joining("\n"));
        String note = owing.note().isEmpty() ? "" : "\n" + owing.note();
        String who = owing.duties().stream().map(Duty::who).distinct().collect(Collectors.joining(", "));
        String first =
                owing.status() == DueStatus.NOT_IN_SERVICE ? "Do not use it" + note.replace("\n", ": ") + "\n" : "";
        String last = first.isEmpty() ? note : "";
        return first + owing.status().words() + "\n" + duties + "\nBy: " + who + last + "\n" + Closing.WORDS;
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
