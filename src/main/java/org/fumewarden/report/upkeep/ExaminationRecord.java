package org.fumewarden.report.upkeep;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Duty;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Examination;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/** The record of thorough examinations of an item, with every field that COSHH regulation 9(4) and L5 paragraph 184 ask for. */
public final class ExaminationRecord implements Paper {
    private static final String GAP = RecordFields.GAP;
    private static final String NONE = "does not apply";

    private final Item item;
    private final Optional<Item.Site> site;
    private final UnitState state;
    private final List<LogEntry> examinations;
    private final List<Duty> duties;
    private final Map<String, List<String>> facts;
    private final LateExamination waiting;

    private ExaminationRecord(
            Item item,
            Optional<Item.Site> site,
            UnitState state,
            List<LogEntry> examinations,
            List<Duty> duties,
            LateExamination waiting) {
        this.item = item;
        this.site = site;
        this.state = state;
        this.examinations = examinations;
        this.facts = new TreeMap<>(site.map(Item.Site::facts).orElse(new TreeMap<>()));
        this.facts.putAll(item.facts());
        this.facts.put("maintenance-record-held", List.of("true"));
        this.duties = ordering(duties, item, facts);
        this.waiting = waiting;
    }

    /**
     * The record of an item: examinations that hold, newest first.
     *
     * @param duties those of the code; the ones that order this record are cited
     * @param day on which it is read: whether an examination is late is said as the due list says it
     */
    public static ExaminationRecord of(Store store, Item item, List<Duty> duties, LocalDate day) {
        List<LogEntry> held = KeptEntries.holding(store, item.id(), Examination.class::isInstance);
        return new ExaminationRecord(
                item,
                store.items(Item.Site.class).stream().findFirst(),
                store.state(item.id()),
                held,
                duties,
                LateExamination.of(store, duties, item.id(), day));
    }

    /** Names of the fields that a clause asks for and that an examination lacks. */
    public List<String> gaps(LogEntry entry) {
        return fields(entry).stream()
                .filter(p -> p.value().equals(GAP))
                .map(RegisterSheet.Pair::name)
                .toList();
    }

    @Override
    public boolean whole() {
        return state.inService()
                && waiting.against().isEmpty()
                && !examinations.isEmpty()
                && gaps(examinations.get(0)).isEmpty();
    }

    public List<LogEntry> examinations() {
        return List.copyOf(examinations);
    }

    /** One row for each examination. */
    @Override
    public String csv() {
        List<List<String>> rows = examinations.stream()
                .map(e -> fields(e).stream().map(RegisterSheet.Pair::value).toList())
                .toList();
        List<String> columns = examinations.isEmpty()
                ? List.of("distinguishing number", "note")
                : fields(examinations.get(0)).stream()
                        .map(RegisterSheet.Pair::name)
                        .toList();
        return CsvSheet.write(columns, rows.isEmpty() ? List.of(List.of(item.id(), "never examined")) : rows);
    }

    @Override
    public RegisterSheet sheet(Speech speech) {
        List<RegisterSheet.Block> blocks = new ArrayList<>();
        if (!state.inService()) {
            blocks.add(new RegisterSheet.Warning(speech.say("DO NOT USE.") + " " + speech.told(state.because())));
        }
        if (state.inService()) {
            waiting.against()
                    .ifPresent(words -> blocks.add(
                            new RegisterSheet.Warning(speech.say("DO NOT USE.") + " " + speech.told(words))));
        }
        if (examinations.isEmpty()) {
            blocks.add(new RegisterSheet.Warning(speech.say("No examination is recorded. Examine before first use.")));
        }
        for (LogEntry entry : examinations) {
            blocks.add(new RegisterSheet.Heading(
                    speech.say("Examination of {0} (entry {1})", speech.day(entry.on()), entry.sequence())));
            blocks.add(new RegisterSheet.Pairs(fields(entry).stream()
                    .map(p -> new RegisterSheet.Pair(
                            speech.say(p.name()),
                            p.name().equals("result") ? speech.told(p.value()) : speech.valued(p.value())))
                    .toList()));
        }
        blocks.addAll(KeptEntries.orderedBy(duties, d -> d.surelyUnder(facts), speech));
        blocks.add(new RegisterSheet.Paragraph(speech.say(Closing.WORDS)));
        return new RegisterSheet(
                speech.say("Examination record: {0}, {1}", item.id(), item.label()),
                blocks,
                speech.words().language());
    }

    private List<RegisterSheet.Pair> fields(LogEntry entry) {
        Examination found = entry.effective()
                .filter(Examination.class::isInstance)
                .map(Examination.class::cast)
                .orElseThrow();
        String supply = fact("air-delivery");
        boolean blown = List.of("powered", "airline", "scba", "?").contains(supply);
        List<RegisterSheet.Pair> pairs = new ArrayList<>();
        pairs.add(new RegisterSheet.Pair("employer", needed(site.map(Item.Site::employer))));
        pairs.add(new RegisterSheet.Pair("address", needed(site.map(Item.Site::address))));
        pairs.add(new RegisterSheet.Pair("kind", item.kind().key()));
        pairs.add(new RegisterSheet.Pair("distinguishing number", item.id()));
        pairs.add(new RegisterSheet.Pair("description", item.label()));
        pairs.add(new RegisterSheet.Pair("manufacturer", maker()));
        pairs.add(new RegisterSheet.Pair("date of examination", entry.on().toString()));
        pairs.add(new RegisterSheet.Pair("examiner", examiner(entry, found)));
        pairs.add(new RegisterSheet.Pair("signature or other mark", needed(found.signature())));
        pairs.add(new RegisterSheet.Pair(
                "result", found.result().key() + (found.whyFailed().isEmpty() ? "" : ": " + found.whyFailed())));
        pairs.add(new RegisterSheet.Pair("condition", found.condition()));
        pairs.add(
                new RegisterSheet.Pair("defects found", found.defects().isEmpty() ? "none recorded" : found.defects()));
        pairs.add(
                new RegisterSheet.Pair("remedial action", found.action().isEmpty() ? "none recorded" : found.action()));
        pairs.add(new RegisterSheet.Pair(
                "filters and canister", when(!fact("filter-kind").equals("none"), found.filterCondition())));
        pairs.add(new RegisterSheet.Pair(
                "battery", when(supply.equals("powered") || supply.equals("?"), found.batteryCondition())));
        pairs.add(new RegisterSheet.Pair(
                "cylinder pressure, bar", when(supply.equals("scba"), number(found.cylinderPressure()))));
        pairs.add(new RegisterSheet.Pair(
                "full cylinder by its manufacturer, bar", when(supply.equals("scba"), number(full(found)))));
        pairs.add(new RegisterSheet.Pair("flow, L/min", when(blown, number(found.flow()))));
        pairs.add(new RegisterSheet.Pair("manufacturer's minimum flow, L/min", when(blown, number(minimum(found)))));
        pairs.add(new RegisterSheet.Pair("methods", found.methods().isEmpty() ? "none recorded" : found.methods()));
        pairs.add(new RegisterSheet.Pair("entry", String.valueOf(entry.sequence())));
        return pairs;
    }

    private static List<Duty> ordering(List<Duty> duties, Item item, Map<String, List<String>> facts) {
        return duties.stream()
                .filter(d -> d.recorded() && d.doneBy().equals("examination") && !d.ruledOutBy(facts))
                .filter(d -> d.appliesTo().stream()
                        .anyMatch(s -> s.key().equals(item.kind().key())))
                .toList();
    }

    private static String examiner(LogEntry entry, Examination found) {
        return Stream.of(entry.by(), found.designation(), found.examinerEmployer())
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private Optional<BigDecimal> full(Examination found) {
        return found.cylinderFullPressure()
                .or(() -> item instanceof Item.Unit unit ? unit.cylinderFullPressure() : Optional.empty());
    }

    private Optional<BigDecimal> minimum(Examination found) {
        return found.minimumFlow().or(() -> item instanceof Item.Unit unit ? unit.minimumFlow() : Optional.empty());
    }

    private String maker() {
        if (item instanceof Item.Unit unit) {
            return needed(unit.maker());
        }
        return item instanceof Item.Mask mask ? mask.model() : NONE;
    }

    /** The recorded circumstance; a question mark when nobody recorded it, so that a field is asked for rather than dropped. */
    private String fact(String name) {
        Map<String, List<String>> facts = item.facts();
        List<String> values = facts.getOrDefault(name, List.of());
        boolean equipment = item instanceof Item.Unit || item instanceof Item.Mask;
        return values.isEmpty() ? (equipment && item instanceof Item.Unit ? "?" : "none") : values.get(0);
    }

    private static String number(Optional<BigDecimal> value) {
        return value.map(BigDecimal::toPlainString).orElse("");
    }

    private static String when(boolean asked, String value) {
        return value.isEmpty() ? (asked ? GAP : NONE) : value;
    }

    private static String needed(Optional<String> value) {
        return needed(value.orElse(""));
    }

    private static String needed(String value) {
        return value.isEmpty() ? GAP : value;
    }
}
