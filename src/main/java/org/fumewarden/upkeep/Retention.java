package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Keep;
import org.fumewarden.model.Subject;

/** Says what may be discarded and when. Nothing is ever discarded by this program. */
public final class Retention {
    /**
     * How long one entry is kept.
     *
     * @param keepThrough the last day on which it must still be there; absent when no day can be given
     * @param why why no day can be given; empty otherwise
     * @param duties the duties that order it
     */
    public record Kept(LogEntry entry, Optional<LocalDate> keepThrough, String why, List<Duty> duties) {
        /** True when every rule has run out on a day. */
        public boolean mayGo(LocalDate today) {
            return keepThrough.map(today::isAfter).orElse(false);
        }
    }

    private final Store store;
    private final List<Duty> duties;

    public Retention(Store store, List<Duty> duties) {
        this.store = store;
        this.duties = duties.stream().filter(Duty::recorded).toList();
    }

    /** Every entry about an item, with the day through which it is kept; the longest rule wins. */
    public List<Kept> of(Item item) {
        List<LogEntry> entries = store.entriesOf(item.id());
        return entries.stream().map(e -> kept(item, e, entries)).toList();
    }

    private Kept kept(Item item, LogEntry entry, List<LogEntry> entries) {
        String serves = entry.details().serves();
        List<Duty> orders = duties.stream().filter(d -> orders(d, item, serves)).toList();
        if (orders.isEmpty()) {
            return new Kept(entry, Optional.empty(), "no rule was found, so it is kept", orders);
        }
        TreeSet<LocalDate> ends = new TreeSet<>();
        List<String> open = new ArrayList<>();
        for (Duty duty : orders) {
            end(duty, item, entry, entries).ifPresentOrElse(ends::add, () -> open.add(lacks(duty)));
        }
        return open.isEmpty()
                ? new Kept(entry, Optional.of(ends.last()), "", orders)
                : new Kept(entry, Optional.empty(), String.join("; ", new TreeSet<>(open)), orders);
    }

    private static boolean orders(Duty duty, Item item, String serves) {
        boolean kind = duty.appliesTo().stream()
                .anyMatch(s -> s.key().equals(item.kind().key())
                        || s == Subject.WEARER_MASK && item.kind() == ItemKind.WEARER);
        return kind && (duty.doneBy().equals(serves) || serves.startsWith(duty.doneBy() + "/"));
    }

    private static Optional<LocalDate> end(Duty duty, Item item, LogEntry entry, List<LogEntry> entries) {
        return switch (duty.keep().kind()) {
            case NOT_STATED -> Optional.empty();
            case UNTIL_NEXT, WHILE_CURRENT ->
                entries.stream()
                        .filter(e -> e.sequence() > entry.sequence()
                                && e.details().serves().equals(entry.details().serves())
                                && !e.on().isBefore(entry.on()))
                        .map(Retention::made)
                        .findFirst();
            case FOR_PERIOD -> through(duty.keep(), item, entry, entries);
        };
    }

    private static Optional<LocalDate> through(Keep keep, Item item, LogEntry entry, List<LogEntry> entries) {
        List<Optional<LocalDate>> ends = keep.legs().stream()
                .map(leg -> anchor(leg.anchor(), item, entry, entries).map(a -> Days.keepThrough(a, leg.period())))
                .toList();
        return ends.stream().allMatch(Optional::isPresent)
                ? ends.stream().flatMap(Optional::stream).max(LocalDate::compareTo)
                : Optional.empty();
    }

    private static Optional<LocalDate> anchor(Anchor anchor, Item item, LogEntry entry, List<LogEntry> entries) {
        return switch (anchor) {
            case RECORD_MADE, EVENT_DATE, LAST_DONE -> Optional.of(made(entry));
            case LAST_ENTRY ->
                entries.stream()
                        .filter(e -> e.details().serves().equals(entry.details().serves()))
                        .map(Retention::made)
                        .max(LocalDate::compareTo);
            default -> item.anchored(anchor);
        };
    }

    /** The later of the day of the deed and the day of the writing: "record made" must not be read too early. */
    private static LocalDate made(LogEntry entry) {
        LocalDate written = entry.recorded().atZone(ZoneOffset.UTC).toLocalDate();
        return written.isAfter(entry.on()) ? written : entry.on();
    }

    private static String lacks(Duty duty) {
        return switch (duty.keep().kind()) {
            case NOT_STATED -> duty.citation().clause() + " states no period";
            case UNTIL_NEXT, WHILE_CURRENT ->
                "it is the current record (" + duty.citation().clause() + ")";
            case FOR_PERIOD -> "the day from which \"" + duty.keep().text() + "\" counts is not in the register";
        };
    }
}
