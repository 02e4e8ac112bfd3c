package org.fumewarden.report.upkeep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Entry;
import org.fumewarden.upkeep.Examination;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/** The record of thorough examinations of an item, with every field that COSHH regulation 9(4) and L5 paragraph 184 ask for. */
public final class ExaminationRecord implements Paper {
    private static final String GAP = RecordFields.GAP;
    private static final String NONE = "does not apply";

    private final Item item;
    private final Optional<Item.Site> site;
    private final UnitState state;
    private final List<Entry> examinations;
    private final List<Duty> duties;

    private ExaminationRecord(
            Item item, Optional<Item.Site> site, UnitState state, List<Entry> examinations, List<Duty> duties) {
        this.item = item;
        this.site = site;
        this.state = state;
        this.examinations = examinations;
        this.duties = duties;
    }

    /**
     * The record of an item: examinations that hold, newest first.
     *
     * @param duties those of the code; the ones that order this record are cited
     */
    public static ExaminationRecord of(Store store, Item item, List<Duty> duties) {
        List<Entry> held = KeptEntries.holding(store, item.id(), Examination.class::isInstance);
        return new ExaminationRecord(
                item,
                store.items(Item.Site.class).stream().findFirst(),
                store.state(item.id()),
                held,
                ordering(duties, item));
    }

    /** Names of the fields that a clause asks for and that an examination lacks. */
    public List<String> gaps(Entry entry) {
        return fields(entry).stream()
                .filter(p -> p.value().equals(GAP))
                .map(Pair::name)
                .toList();
    }

    @Override
    public boolean whole() {
        return state.inService()
                && !examinations.isEmpty()
                && gaps(examinations.get(0)).isEmpty();
    }

    public List<Entry> examinations() {
        return List.copyOf(examinations);
    }

    /** One row for each examination. */
    @Override
    public String csv() {
        List<List<String>> rows = examinations.stream()
                .map(e -> fields(e).stream().map(Pair::value).toList())
                .toList();
        List<String> columns = examinations.isEmpty()
                ? List.of("distinguishing number", "note")
                : fields(examinations.get(0)).stream().map(Pair::name).toList();
        return CsvSheet.write(columns, rows.isEmpty() ? List.of(List.of(item.id(), "never examined")) : rows);
    }

    @Override
    public Sheet sheet() {
        PaperParts parts = new PaperParts();
        if (!state.inService()) {
            parts.warns("DO NOT USE. " + state.because());
        }
        if (examinations.isEmpty()) {
            parts.warns("No examination stands in the log: examine before first use.");
        }
        for (Entry entry : examinations) {
            parts.head("Examination of " + entry.on() + " (entry " + entry.sequence() + ")")
                    .pairs(fields(entry));
        }
        KeptEntries.orderedBy(parts, duties, d -> true);
        return parts.sheet("record", "Examination record: " + item.id(), item.label());
    }

    private List<Pair> fields(Entry entry) {
        Examination found = entry.effective()
                .filter(Examination.class::isInstance)
                .map(Examination.class::cast)
                .orElseThrow();
        String supply = fact("air-delivery");
        boolean blown = List.of("powered", "airline", "scba", "?").contains(supply);
        List<Pair> pairs = new ArrayList<>();
        pairs.add(new Pair("employer", needed(site.map(Item.Site::employer))));
        pairs.add(new Pair("address", needed(site.map(Item.Site::address))));
        pairs.add(new Pair("kind", item.kind().key()));
        pairs.add(new Pair("distinguishing number", item.id()));
        pairs.add(new Pair("description", item.label()));
        pairs.add(new Pair("maker", maker()));
        pairs.add(new Pair("date of examination", entry.on().toString()));
        pairs.add(new Pair("examiner", examiner(entry, found)));
        pairs.add(new Pair("signature or other mark", needed(found.signature())));
        pairs.add(new Pair(
                "result", found.result().key() + (found.whyFailed().isEmpty() ? "" : ": " + found.whyFailed())));
        pairs.add(new Pair("condition", found.condition()));
        pairs.add(new Pair("defects found", found.defects().isEmpty() ? "none written down" : found.defects()));
        pairs.add(new Pair("remedial action", found.action().isEmpty() ? "none written down" : found.action()));
        pairs.add(new Pair(
                "filters and canister", when(!fact("filter-kind").equals("none"), found.filterCondition())));
        pairs.add(new Pair(
                "battery", when(supply.equals("powered") || supply.equals("?"), found.batteryCondition())));
        pairs.add(new Pair(
                "cylinder pressure, bar", when(supply.equals("scba"), number(found.cylinderPressure()))));
        pairs.add(new Pair(
                "full cylinder by its manufacturer, bar", when(supply.equals("scba"), number(full(found)))));
        pairs.add(new Pair("flow, L/min", when(blown, number(found.flow()))));
        pairs.add(new Pair("manufacturer's minimum flow, L/min", when(blown, number(minimum(found)))));
        pairs.add(new Pair("methods", found.methods().isEmpty() ? "none written down" : found.methods()));
        pairs.add(new Pair("entry", String.valueOf(entry.sequence())));
        return pairs;
    }

    private static List<Duty> ordering(List<Duty> duties, Item item) {
        return duties.stream()
                .filter(d -> d.recorded() && d.doneBy().equals("examination") && !d.ruledOutBy(item.facts()))
                .filter(d -> d.appliesTo().stream()
                        .anyMatch(s -> s.key().equals(item.kind().key())))
                .toList();
    }

    private static String examiner(Entry entry, Examination found) {
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
