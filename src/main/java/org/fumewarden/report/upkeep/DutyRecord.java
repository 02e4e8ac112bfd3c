package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.duties.FitMode;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Subject;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.FitTest;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Owing;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/**
 * The records about a wearer, plant, air supply or site that duties order, each with every field that the row of the duty asks
 * for: thorough examinations of extraction, fit tests, air tests, training, medical clearances.
 *
 * <p>What the log lacks is shown as not recorded. Where no row names fields, the fields of the log entry are shown.
 */
public final class DutyRecord implements Paper {
    /** One deed, with the duties that order its record and the entries that hold. */
    private record Deed(
            String serves,
            List<Duty> duties,
            List<Duty> sure,
            List<String> fields,
            List<LogEntry> entries,
            List<Owing> late) {}

    private final Item item;
    private final UnitState state;
    private final Map<String, String> known;
    private final List<Deed> deeds;
    /** Duties that ask for a record if they apply, which the register does not say. */
    private final List<Duty> open;

    private final Function<String, Optional<String>> fitMode;

    private DutyRecord(
            Item item,
            UnitState state,
            Map<String, String> known,
            List<Deed> deeds,
            List<Duty> open,
            Function<String, Optional<String>> fitMode) {
        this.open = open;
        this.fitMode = fitMode;
        this.item = item;
        this.state = state;
        this.known = known;
        this.deeds = deeds;
    }

    /** The records of an item, newest entry first; on the day what is late is said as the due list says it. */
    public static DutyRecord of(Store store, Item item, List<Duty> duties, LocalDate day) {
        List<Owing> late = new DueList(store, duties, day, Period.ZERO)
                .of(item.id()).owings().stream().filter(Owing::late).toList();
        Map<String, String> known = new TreeMap<>();
        Optional<Item.Site> site = store.items(Item.Site.class).stream().findFirst();
        site.ifPresent(s -> Forms.values(s).forEach((name, value) -> known.put("site." + name, value)));
        Forms.values(item).forEach((name, value) -> known.put("item." + name, value));
        List<Map<String, List<String>>> circumstances = circumstances(store, site, item);
        Map<String, List<Duty>> ordered = new LinkedHashMap<>();
        duties.stream()
                .filter(d -> concerns(d, item) && !circumstances.stream().allMatch(d::ruledOutBy))
                .forEach(d -> ordered.computeIfAbsent(d.doneBy(), s -> new ArrayList<>())
                        .add(d));
        List<Deed> deeds = new ArrayList<>();
        List<Duty> open = new ArrayList<>();
        ordered.forEach((serves, all) -> {
            List<LogEntry> entries = KeptEntries.holding(store, item.id(), d -> serves(d.serves(), serves));
            List<Duty> sure = all.stream()
                    .filter(d -> circumstances.stream().anyMatch(d::surelyUnder))
                    .toList();
            if (!entries.isEmpty() || sure.stream().anyMatch(Duty::recorded)) {
                List<Owing> own =
                        late.stream().filter(o -> serves(o.doneBy(), serves)).toList();
                deeds.add(new Deed(serves, all, sure, fields(all, serves), entries, own));
            } else {
                all.stream().filter(Duty::recorded).forEach(open::add);
            }
        });
        return new DutyRecord(item, store.state(item.id()), known, deeds, open, m -> FitMode.of(store, duties, m));
    }

    private static boolean concerns(Duty duty, Item item) {
        Subject own = Subject.valueOf(item.kind().name());
        return duty.appliesTo().contains(own)
                || own == Subject.WEARER && duty.appliesTo().contains(Subject.WEARER_MASK);
    }

    /** What is known of the item and its site; of a wearer, once for each mask. */
    private static List<Map<String, List<String>>> circumstances(Store store, Optional<Item.Site> site, Item item) {
        Map<String, List<String>> own = new TreeMap<>();
        site.ifPresent(s -> own.putAll(s.facts()));
        own.putAll(item.facts());
        if (item instanceof Item.Plant) {
            own.putIfAbsent("lev-present", List.of("true"));
        }
        List<Map<String, List<String>>> all = new ArrayList<>();
        if (item instanceof Item.Wearer wearer) {
            wearer.masks().stream().flatMap(id -> store.item(id).stream()).forEach(m -> {
                Map<String, List<String>> worn = new TreeMap<>(own);
                worn.putAll(m.facts());
                all.add(worn);
            });
        }
        return all.isEmpty() ? List.of(own) : all;
    }

    private static boolean serves(String serves, String deed) {
        return serves.equals(deed) || serves.startsWith(deed + "/");
    }

    private static List<String> fields(List<Duty> duties, String serves) {
        Set<String> fields = new LinkedHashSet<>();
        duties.forEach(d -> fields.addAll(d.fields()));
        if (fields.isEmpty()) {
            String kind = serves.split("/")[0];
            fields.addAll(
                    Forms.entryKinds().contains(kind)
                            ? Forms.entryFields(kind).stream()
                                    .map(Forms.Field::name)
                                    .filter(name -> !name.equals("remarks"))
                                    .toList()
                            : List.of("task", "remarks"));
        }
        return List.copyOf(fields);
    }

    /** True when at least one record is there for every deed, nothing asked for is lacking, and the item is open for use. */
    @Override
    public boolean whole() {
        return state.inService()
                && !deeds.isEmpty()
                && deeds.stream()
                        .allMatch(d -> !d.entries().isEmpty()
                                && d.late().isEmpty()
                                && gaps(d, 0).isEmpty());
    }

    /** Names of the fields that the newest record of a deed lacks. */
    public List<String> gaps(String serves) {
        return deeds.stream()
                .filter(d -> d.serves().equals(serves) && !d.entries().isEmpty())
                .flatMap(d -> gaps(d, 0).stream())
                .toList();
    }

    private List<String> gaps(Deed deed, int entry) {
        return pairs(deed, entry).stream()
                .filter(p -> p.value().contains(RecordFields.GAP))
                .map(RegisterSheet.Pair::name)
                .toList();
    }

    /** One row for each field of each record. */
    @Override
    public String csv() {
        List<List<String>> rows = new ArrayList<>();
        for (Deed deed : deeds) {
            for (int i = 0; i < deed.entries().size(); i++) {
                LogEntry entry = deed.entries().get(i);
                for (RegisterSheet.Pair pair : pairs(deed, i)) {
                    rows.add(List.of(
                            item.id(),
                            deed.serves(),
                            String.valueOf(entry.sequence()),
                            entry.on().toString(),
                            pair.name(),
                            pair.value()));
                }
            }
            if (deed.entries().isEmpty()) {
                rows.add(List.of(item.id(), deed.serves(), "", "", "record", RecordFields.GAP));
            }
        }
        return CsvSheet.write(List.of("item", "done-by", "entry", "date", "field", "value"), rows);
    }

    @Override
    public RegisterSheet sheet(Speech speech) {
        List<RegisterSheet.Block> blocks = new ArrayList<>();
        if (!state.inService()) {
            blocks.add(new RegisterSheet.Warning(speech.say("DO NOT USE.") + " " + speech.told(state.because())));
        }
        if (deeds.isEmpty() && open.isEmpty()) {
            blocks.add(new RegisterSheet.Paragraph(
                    speech.say("The duties of this code ask for no record about this item.")));
        }
        for (Deed deed : deeds) {
            if (deed.entries().isEmpty()) {
                blocks.add(new RegisterSheet.Heading(words(deed, speech)));
                blocks.add(new RegisterSheet.Warning(speech.say(
                        "NOT RECORDED: {0}, for {1}.", new DutyTerms(speech).deed(deed.serves(), kind()), item.id())));
            }
            deed.late()
                    .forEach(o -> blocks.add(
                            new RegisterSheet.Warning(words(deed, speech) + ": " + speech.told(o.words() + "."))));
            for (int i = 0; i < deed.entries().size(); i++) {
                LogEntry entry = deed.entries().get(i);
                blocks.add(new RegisterSheet.Heading(speech.say(
                        "{0} of {1} (entry {2})", words(deed, speech), speech.day(entry.on()), entry.sequence())));
                blocks.add(new RegisterSheet.Pairs(pairs(deed, i).stream()
                        .map(p -> new RegisterSheet.Pair(
                                RecordFields.named(p.name(), speech),
                                p.name().equals("reason") ? speech.told(p.value()) : speech.valued(p.value())))
                        .toList()));
            }
            blocks.addAll(KeptEntries.orderedBy(deed.duties(), deed.sure()::contains, speech));
        }
        if (!open.isEmpty()) {
            blocks.add(new RegisterSheet.Heading(speech.say("What may have to be recorded")));
            blocks.add(
                    new RegisterSheet.Paragraph(speech.say("The register does not state the facts that decide this.")));
            blocks.add(KeptEntries.points(open, d -> true, speech));
        }
        blocks.add(new RegisterSheet.Paragraph(speech.say(Closing.WORDS)));
        return new RegisterSheet(
                speech.say("Records: {0}, {1}", item.id(), item.label()),
                blocks,
                speech.words().language());
    }

    private List<ItemKind> kind() {
        return List.of(item.kind());
    }

    private String words(Deed deed, Speech speech) {
        return StringUtils.capitalize(new DutyTerms(speech).deed(deed.serves(), kind()));
    }

    /** The fields asked for; then the outcome and the person, which a reader looks for in any record. */
    private List<RegisterSheet.Pair> pairs(Deed deed, int at) {
        LogEntry entry = deed.entries().get(at);
        Map<String, String> all = new TreeMap<>(known);
        Map<String, String> own = Forms.values(entry.effective().orElseThrow());
        all.putAll(own);
        all.put("entry.on", entry.on().toString());
        all.put("entry.by", entry.by());
        Optional<LogEntry> before = deed.entries().stream().skip(at + 1L).findFirst();
        all.put("entry.before", before.map(e -> e.on().toString()).orElse("none before it"));
        List<RegisterSheet.Pair> pairs = new ArrayList<>();
        for (String field : deed.fields()) {
            pairs.add(new RegisterSheet.Pair(field, value(field, all)));
        }
        if (!deed.fields().contains("result")) {
            pairs.add(new RegisterSheet.Pair(
                    "outcome", entry.effective().orElseThrow().result().key()));
        }
        Details told = entry.effective().orElseThrow();
        if (!told.whyFailed().isEmpty()) {
            pairs.add(new RegisterSheet.Pair("reason", told.whyFailed()));
        }
        if (told instanceof FitTest test) {
            fitMode.apply(test.model()).ifPresent(mode -> pairs.add(new RegisterSheet.Pair("mode of test", mode)));
        }
        pairs.add(new RegisterSheet.Pair("done by", entry.by()));
        return pairs;
    }

    private static String value(String field, Map<String, String> known) {
        return RecordFields.held(field)
                ? RecordFields.value(field, known)
                : known.getOrDefault(field, RecordFields.GAP);
    }
}
