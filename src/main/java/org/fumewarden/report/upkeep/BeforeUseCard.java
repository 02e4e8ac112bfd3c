package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Term;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.UnitState;

/** The checks before use in the wearer's order, on one page. */
public final class BeforeUseCard implements Paper {
    private final Item.Unit unit;
    private final UnitState state;
    private final DutyBook book;
    private final Optional<String> late;

    private BeforeUseCard(Item.Unit unit, UnitState state, DutyBook book, Optional<String> late) {
        this.unit = unit;
        this.state = state;
        this.book = book;
        this.late = late;
    }

    /** The card of a unit; the checks are those of its way of supply. */
    public static BeforeUseCard of(Item.Unit unit, UnitState state, DutyBook book) {
        return of(unit, state, book, Optional.empty());
    }

    /**
     * The card of a unit.
     *
     * @param late that its examination is late, in words
     */
    public static BeforeUseCard of(Item.Unit unit, UnitState state, DutyBook book, Optional<String> late) {
        return new BeforeUseCard(unit, state, book, late);
    }

    @Override
    public String text() {
        return sheet().text();
    }

    @Override
    public String html() {
        return sheet().html();
    }

    /** One row for each check, with room for the outcome. */
    @Override
    public String csv() {
        List<Term> checks = checks();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < checks.size(); i++) {
            Term check = checks.get(i);
            rows.add(List.of(unit.id(), String.valueOf(i + 1), check.id(), words(check), source(check), "", ""));
        }
        return CsvSheet.write(List.of("unit", "number", "check", "pass when", "source", "outcome", "remark"), rows);
    }

    @Override
    public boolean whole() {
        return state.inService() && late.isEmpty();
    }

    /** The checks in order; those of every way of supply when the register does not say which this is. */
    public List<Term> checks() {
        List<String> supply = unit.facts().getOrDefault("air-delivery", List.of());
        List<Term> checks = new ArrayList<>();
        if (supply.isEmpty() || supply.contains("powered")) {
            checks.addAll(book.catalogue("before-use-powered"));
        }
        if (!supply.contains("powered")) {
            checks.addAll(book.catalogue("before-use-airline"));
        }
        return checks;
    }

    private Sheet sheet() {
        List<Sheet.Block> blocks = new ArrayList<>();
        if (!state.inService()) {
            blocks.add(new Sheet.Warning("DO NOT USE. This unit is " + state.because()));
        }
        late.ifPresent(words -> blocks.add(new Sheet.Warning("DO NOT USE. Of this unit " + words + ".")));
        blocks.add(new Sheet.Pairs(List.of(
                new Sheet.Pair("unit", unit.id() + ", " + unit.label()),
                new Sheet.Pair(
                        "manufacturer's minimum flow",
                        unit.minimumFlow()
                                .map(f -> f.toPlainString() + " l/min")
                                .orElse("NOT RECORDED: read it from the manufacturer's instructions before use")),
                new Sheet.Pair("date and shift", ""),
                new Sheet.Pair("wearer", ""))));
        blocks.add(new Sheet.Heading("Before use, in this order"));
        blocks.add(new Sheet.Paragraph("Any NO: do not use the unit. Tag it, hand it in and record it."));
        blocks.add(new Sheet.Ticks(checks().stream().map(BeforeUseCard::words).toList()));
        blocks.add(new Sheet.Heading("When something warns"));
        blocks.add(new Sheet.Points(book.catalogue("alarm-action").stream()
                .map(BeforeUseCard::words)
                .toList()));
        blocks.add(new Sheet.Heading("Never"));
        blocks.add(new Sheet.Points(
                book.catalogue("never").stream().map(BeforeUseCard::words).toList()));
        blocks.add(new Sheet.Paragraph(
                "A star marks what rests on common practice or memory, not on a text that was read. " + Closing.WORDS));
        blocks.add(new Sheet.Signatures(List.of("Wearer")));
        return new Sheet("Before use: unit " + unit.id(), blocks);
    }

    private static String words(Term term) {
        return term.ref().citation().confidence().unverified() ? term.name() + " *" : term.name();
    }

    private static String source(Term term) {
        return term.ref().citation().source() + " " + term.ref().citation().clause() + " ("
                + term.ref().citation().confidence().key() + ")";
    }
}
