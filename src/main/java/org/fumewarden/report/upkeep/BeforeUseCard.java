package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Speech;
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

    /** One row for each check, with room for the outcome. */
    @Override
    public String csv() {
        List<Term> checks = checks();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < checks.size(); i++) {
            Term check = checks.get(i);
            rows.add(List.of(
                    unit.id(),
                    String.valueOf(i + 1),
                    check.id(),
                    check.name(),
                    unread(check) ? "common practice or memory" : "a text that was read",
                    "",
                    ""));
        }
        return CsvSheet.write(List.of("unit", "number", "check", "pass when", "rests on", "outcome", "remark"), rows);
    }

    @Override
    public boolean whole() {
        return state.inService() && late.isEmpty();
    }

    /** The checks in order; those of every way of supply when the register does not say which this is. */
    public List<Term> checks() {
        List<Term> checks = new ArrayList<>(concerning("before-use-airline"));
        checks.addAll(concerning("before-use-powered"));
        return checks;
    }

    @Override
    public RegisterSheet sheet(Speech speech) {
        List<RegisterSheet.Block> blocks = new ArrayList<>();
        if (!state.inService()) {
            blocks.add(new RegisterSheet.Warning(speech.say("DO NOT USE.") + " " + speech.told(state.because())));
        }
        late.ifPresent(
                words -> blocks.add(new RegisterSheet.Warning(speech.say("DO NOT USE.") + " " + speech.told(words))));
        blocks.add(new RegisterSheet.Pairs(List.of(
                new RegisterSheet.Pair(speech.say("unit"), unit.id() + ", " + unit.label()),
                new RegisterSheet.Pair(
                        speech.say("manufacturer's minimum flow"),
                        unit.minimumFlow()
                                .map(f -> speech.spelt(f.toPlainString()) + " L/min")
                                .orElse(speech.say(
                                        "NOT RECORDED: read it from the manufacturer's instructions before use"))),
                new RegisterSheet.Pair(speech.say("date and shift"), ""),
                new RegisterSheet.Pair(speech.say("wearer"), ""))));
        blocks.add(new RegisterSheet.Heading(speech.say("Before use, in this order")));
        blocks.add(new RegisterSheet.Paragraph(
                speech.say("Any box left empty: do not use the unit. Tag it, hand it in and record it.")));
        blocks.add(new RegisterSheet.Ticks(words(checks(), speech)));
        blocks.add(new RegisterSheet.Heading(speech.say("When something warns")));
        blocks.add(new RegisterSheet.Points(words(concerning("alarm-action"), speech)));
        blocks.add(new RegisterSheet.Heading(speech.say("Never")));
        blocks.add(new RegisterSheet.Points(words(concerning("never"), speech)));
        blocks.add(new RegisterSheet.Paragraph(
                speech.say("A star marks what rests on common practice or memory, not on a text that was read.") + " "
                        + speech.say(Closing.WORDS)));
        blocks.add(new RegisterSheet.Signatures(List.of(speech.say("Wearer")), speech.say("Date")));
        return new RegisterSheet(
                speech.say("Before use: unit {0}", unit.id()),
                blocks,
                speech.words().language());
    }

    private List<Term> concerning(String catalogue) {
        return book.catalogue(catalogue).stream()
                .filter(t -> t.concerns(unit.facts()))
                .toList();
    }

    private static List<String> words(List<Term> terms, Speech speech) {
        return terms.stream()
                .map(t -> speech.told(t.name()) + (unread(t) ? " *" : ""))
                .toList();
    }

    private static boolean unread(Term term) {
        return term.ref().citation().confidence().unverified();
    }
}
