package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.codes.Document;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Need;
import org.fumewarden.model.Offer;
import org.fumewarden.model.Row;
import org.fumewarden.model.Settlement;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Step;

/** All that the page rests on and leaves out. What the page says in full is not said again. */
final class Annex {
    private static final int MANY = 3;

    private final Advice advice;
    private final List<Row> rows;
    private final Spoken spoken;
    private final Notes notes;
    private final Places places;
    /** The letter of each reason for or against a class; one that was told of undecided classes is not told again. */
    private final Map<String, String> letters = new LinkedHashMap<>();

    private final List<Part> parts = new ArrayList<>();

    Annex(Advice advice, List<Row> rows, Map<String, Document> documents, Spoken spoken) {
        this.notes = new Notes(documents, spoken);
        this.advice = advice;
        this.rows = rows;
        this.spoken = spoken;
        this.places = new Places(advice, rows, spoken, notes);
    }

    /**
     * Writes the parts.
     *
     * @param samples what the samples say; empty without any
     */
    List<Part> write(List<Line> samples) {
        add("told", new AlsoTold(advice, spoken).lines());
        sentences("controls", advice.controlsFirst());
        if (advice.status() != Status.DO_NOT_ENTER) {
            sentences("stops", advice.stops());
        }
        add("accounts", accounts());
        sentences("hazards", advice.hazards());
        add("samples", samples);
        sentences("filters", advice.filters());
        add("chosen", advice.recommended().map(this::chosen).orElse(List.of()));
        add(advice.status() == Status.DO_NOT_ENTER ? "entry" : "suitable", classes(advice.with(Suitability.SUITABLE)));
        add("undecided", classes(advice.with(Suitability.UNDECIDED)));
        add("undecided-why", reasons(advice.with(Suitability.UNDECIDED)));
        add("barred", reasons(advice.with(Suitability.BARRED)));
        add("checks", checks());
        sentences("cautions", advice.cautions());
        add("compare", compare());
        add("basis", basis());
        add("notes", notes.lines());
        return parts;
    }

    private void add(String key, List<Line> lines) {
        if (!lines.isEmpty()) {
            parts.add(new Part(key, spoken.say("sheet." + key), lines));
        }
    }

    private List<Line> accounts() {
        List<Line> lines = new ArrayList<>(new AirPart(advice, Places.notLaw(rows), spoken).all(places::of));
        if (advice.accounts().stream()
                .map(l -> l.account().kind())
                .anyMatch(Set.of(Settlement.COMPARED, Settlement.BORROWED)::contains)) {
            lines.add(new Line.Says(Sign.NONE, spoken.say("air.outside")));
        }
        lines.addAll(places.dangerous());
        return lines;
    }

    /** Sentences of one rule that repeat themselves are said once, with the other subjects after it; other figures are another sentence. */
    private void sentences(String key, List<Reason> reasons) {
        Map<String, List<Reason>> byRule = new LinkedHashMap<>();
        reasons.stream().sorted(Comparator.comparing(this::needed).reversed()).forEach(r -> byRule.computeIfAbsent(
                        r.rule() + spoken.figures(r), k -> new ArrayList<>())
                .add(r));
        List<Line> lines = new ArrayList<>();
        byRule.values().forEach(same -> {
            if (same.size() < MANY) {
                same.forEach(r -> lines.add(spoken.sentence(Sign.ITEM, r, notes.of(r))));
                return;
            }
            String others = same.stream()
                    .skip(1)
                    .map(r -> spoken.told(spoken.vocabulary().nameWithin(r.subject())))
                    .distinct()
                    .collect(Collectors.joining("; "));
            Reason first = same.get(0);
            Line.Says one = spoken.sentence(Sign.ITEM, first, notes.of(first));
            String likewise = one.says() + " " + spoken.say("sheet.likewise", others);
            lines.add(new Line.Says(one.sign(), "", likewise, one.notes(), one.language()));
        });
        add(key, lines);
    }

    /** The factor that a sentence tells, so that the highest is said first; nought for the others, which keep their order. */
    private BigDecimal needed(Reason reason) {
        return advice.trail().step(reason.step()).map(Step::conclusion).stream()
                .filter(Need.class::isInstance)
                .map(n -> ((Need) n).value())
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private List<Line> chosen(Respirator chosen) {
        return chosen.reasons().stream()
                .map(r -> (Line)
                        spoken.sentence(Sign.ITEM, r, notes.of(r) + ", " + places.ofFactor(chosen.deviceClass())))
                .toList();
    }

    /** Classes by family, in ranking order. */
    private List<Line> classes(List<Respirator> respirators) {
        Map<String, String> families = rows.stream()
                .filter(DeviceClass.class::isInstance)
                .map(DeviceClass.class::cast)
                .collect(Collectors.toMap(DeviceClass::id, DeviceClass::family, (a, b) -> b));
        Map<String, List<List<String>>> byFamily = new LinkedHashMap<>();
        for (Respirator r : respirators) {
            byFamily.computeIfAbsent(families.get(r.deviceClass()), f -> new ArrayList<>())
                    .add(List.of(
                            spoken.device(r.deviceClass(), r.name()),
                            r.factor().map(Spoken::figure).orElse("-"),
                            r.filter().equals(Respirator.SUPPLIED_AIR) ? "-" : r.filter(),
                            places.ofFactor(r.deviceClass())));
        }
        List<List<String>> cells = new ArrayList<>();
        byFamily.values().forEach(cells::addAll);
        List<String> heads = Stream.of("column.class", "column.factor", "column.filter", "air.note")
                .map(spoken::say)
                .toList();
        return cells.isEmpty() ? List.of() : List.of(new Line.Table(heads, cells, List.of(1)));
    }

    /** Each class once with the letters of all its reasons; each reason once, in words, below. */
    private List<Line> reasons(List<Respirator> respirators) {
        Set<String> offers =
                advice.trail().concluding(Offer.class).map(Step::id).collect(Collectors.toSet());
        List<Line> said = new ArrayList<>();
        List<List<String>> cells = new ArrayList<>();
        for (Respirator respirator : respirators) {
            Set<String> own = new LinkedHashSet<>();
            for (Reason reason : told(respirator)) {
                // What an answer makes possible is said once for all classes.
                boolean offer = respirator.verdict() == Suitability.UNDECIDED && offers.contains(reason.step());
                String key = reason.rule() + " " + (offer ? "" : reason.says());
                if (!letters.containsKey(key)) {
                    letters.put(key, letter(letters.size()));
                    Line.Says says = spoken.sentence(Sign.NONE, reason, notes.of(reason));
                    said.add(new Line.Says(
                            says.sign(),
                            letters.get(key) + ".",
                            offer ? spoken.say("sheet.possible") : says.says(),
                            says.notes(),
                            offer ? "" : says.language()));
                }
                own.add(letters.get(key));
            }
            cells.add(List.of(
                    spoken.device(respirator.deviceClass(), respirator.name()),
                    String.join(", ", own),
                    places.ofFactor(respirator.deviceClass())));
        }
        if (cells.isEmpty()) {
            return List.of();
        }
        said.add(
                0,
                new Line.Table(
                        Stream.of("column.class", "column.reasons", "air.note")
                                .map(spoken::say)
                                .toList(),
                        cells,
                        List.of()));
        return said;
    }

    /** Where nobody may start, no class is said to become possible by an answer. */
    private List<Reason> told(Respirator respirator) {
        Set<String> offers = advice.status() == Status.DO_NOT_ENTER
                ? advice.trail().concluding(Offer.class).map(Step::id).collect(Collectors.toSet())
                : Set.of();
        return respirator.reasons().stream()
                .filter(r -> !offers.contains(r.step()))
                .toList();
    }

    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    private List<Line> checks() {
        List<Line> lines = new ArrayList<>();
        KeepUpPart.byWhen(advice, rows, spoken).forEach((when, checks) -> {
            lines.add(new Line.Head(when));
            checks.forEach(c -> lines.add(check(c)));
        });
        return lines;
    }

    private Line check(Check check) {
        String record = check.recorded() ? " " + spoken.say("checks.record", spoken.keep(check.keep())) : "";
        String note = notes.of(
                notes.place(check.source(), check.clause()),
                check.force().equals(Check.OWN)
                        ? check.id()
                        : check.id() + ", " + spoken.words().sayOr("force." + check.force(), check.force()));
        String what = StringUtils.stripEnd(spoken.told(check.what()), ".");
        return new Line.Says(Sign.ITEM, "", what + " (" + spoken.who(check.who()) + ")." + record, note, "");
    }

    /** The values to compare with their text before anybody signs; those with one text and one reason stand together. */
    private List<Line> compare() {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (ToCompare value : advice.turning()) {
            String held = StringUtils.substringAfter(value.value(), ": ");
            String text = notes.place(value.document(), value.place());
            String says = spoken.told(held) + ".\t" + text + ". " + spoken.told(value.matters());
            names.computeIfAbsent(says, s -> new ArrayList<>())
                    .add(spoken.told(StringUtils.substringBefore(value.value(), ": ")));
        }
        List<Line> lines = new ArrayList<>();
        names.forEach((says, of) -> lines.add(new Line.Says(
                Sign.ITEM,
                String.join("; ", of) + ": " + StringUtils.substringBefore(says, "\t"),
                StringUtils.substringAfter(says, "\t"))));
        int rest = advice.compareBeforeSigning().size() - advice.turning().size();
        if (rest > 0) {
            lines.add(new Line.Says(
                    Sign.NONE,
                    rest == 1 ? spoken.say("sheet.compare.rest.one") : spoken.say("sheet.compare.rest", rest)));
        }
        return lines;
    }

    private List<Line> basis() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line.Says(
                Sign.NONE,
                spoken.say(
                        "sheet.editions",
                        spoken.speech().cited(advice.codeUsed().edition()),
                        advice.codeUsed().checkedOn())));
        if (!advice.codeUsed().lacks().isEmpty()) {
            lines.add(new Line.Says(
                    Sign.NONE,
                    spoken.say(
                            "sheet.lacks",
                            advice.codeUsed().lacks().stream()
                                    .map(spoken.speech()::cited)
                                    .collect(Collectors.joining("; ")))));
        }
        lines.addAll(new Affirmed(advice, rows, spoken).lines());
        lines.add(new Line.Says(
                Sign.NONE,
                spoken.say(
                        "sheet.revision",
                        advice.revision(),
                        advice.trail().steps().size())));
        return lines;
    }
}
