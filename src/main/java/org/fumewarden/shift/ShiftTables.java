package org.fumewarden.shift;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.endurance.AdsorptionConstants;
import org.fumewarden.endurance.AdsorptionModel;
import org.fumewarden.endurance.AdsorptionRange;
import org.fumewarden.endurance.CaseRange;
import org.fumewarden.endurance.ClassLimits;
import org.fumewarden.endurance.CodeCap;
import org.fumewarden.endurance.ColdTable;
import org.fumewarden.endurance.LowBoilerTimes;
import org.fumewarden.endurance.PackRules;
import org.fumewarden.endurance.RuleOfThumb;
import org.fumewarden.endurance.ShadeTable;
import org.fumewarden.endurance.Span;
import org.fumewarden.endurance.StandardAtmosphere;
import org.fumewarden.endurance.TestCapacity;
import org.fumewarden.endurance.Vapour;
import org.fumewarden.endurance.WorkRate;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.EyeShade;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;

/**
 * The figures of a rule base as the arithmetic wants them.
 *
 * @param filterTests approval tests of EN 14387, with the agent that is the test gas
 * @param cartridgeTests approval tests of 42 CFR 84
 * @param vapours by CAS number
 * @param model adsorption model
 * @param thumb published rule of thumb
 * @param lowBoilers group times of AX filters
 * @param classLimits highest use concentrations of EN 14387
 * @param caps longest use by filter type, by id
 * @param opened longest time after the seal was broken, months
 * @param workRates by id
 * @param atmosphere standard atmosphere
 * @param blower figures of the blower model, by id
 * @param packRules of lithium-ion packs
 * @param cold of lithium-ion packs
 * @param minimumShades of the eye filter
 * @param suggestedShades of the eye filter
 */
public record ShiftTables(
        List<TestGas> filterTests,
        List<TestGas> cartridgeTests,
        Map<String, Vapour> vapours,
        AdsorptionModel model,
        RuleOfThumb thumb,
        LowBoilerTimes lowBoilers,
        ClassLimits classLimits,
        Map<String, CodeCap> caps,
        int opened,
        Map<String, WorkRate> workRates,
        StandardAtmosphere atmosphere,
        Map<String, CaseRange> blower,
        PackRules packRules,
        ColdTable cold,
        ShadeTable minimumShades,
        ShadeTable suggestedShades) {

    /** An approval test and the agent of the tables that its gas is. */
    public record TestGas(TestCapacity test, String agent) {}

    /**
     * The figures among the rows in force on a day.
     *
     * @throws org.fumewarden.codes.InputException when a table cannot be used or has no row in force
     */
    public static ShiftTables of(List<Row> rows) {
        FigureTable times = FigureTable.of(rows, "filter-use-times");
        return new ShiftTables(
                tests(FigureTable.of(rows, "gas-filter-tests")),
                tests(FigureTable.of(rows, "cartridge-tests")),
                FigureTable.of(rows, "adsorbed-vapours").map(row -> Map.entry(row.text("cas"), vapour(row))).stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                model(FigureTable.of(rows, "adsorption-model")),
                thumb(FigureTable.of(rows, "service-life-rules")),
                new LowBoilerTimes(FigureTable.of(rows, "low-boiler-times")
                        .map(row -> new LowBoilerTimes.Row(
                                (int) row.number("group"), row.number("ppm"), row.number("minutes")))),
                new ClassLimits(FigureTable.of(rows, "gas-filter-classes")
                        .map(row ->
                                new ClassLimits.Row(row.text("type"), (int) row.number("class"), row.number("ppm")))),
                times
                        .map(row ->
                                new CodeCap(row.optional("minutes").orElse(Double.NaN), row.text("id"), row.document()))
                        .stream()
                        .collect(Collectors.toMap(CodeCap::says, Function.identity())),
                (int) times.row("opened-months").number("months"),
                FigureTable.of(rows, "work-rates")
                        .map(row -> new WorkRate(
                                row.text("id"),
                                row.number("minute-volume"),
                                row.number("peak"),
                                row.number("peak-speech"),
                                row.optional("at-most-minutes")))
                        .stream()
                        .collect(Collectors.toMap(WorkRate::id, Function.identity())),
                atmosphere(FigureTable.thresholds(rows, "standard-atmosphere")),
                FigureTable.of(rows, "blower-model")
                        .map(row -> Map.entry(
                                row.text("id"),
                                new CaseRange(row.number("low"), row.number("likely"), row.number("high"))))
                        .stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                pack(FigureTable.of(rows, "pack-behaviour")),
                cold(FigureTable.of(rows, "pack-cold")),
                shades(rows, "shade-tables"),
                shades(rows, "shade-suggestions"));
    }

    private static List<TestGas> tests(FigureTable table) {
        return table.map(row -> new TestGas(
                new TestCapacity(
                        row.text("mark"),
                        row.text("gas"),
                        row.number("ppm"),
                        row.number("breakthrough-ppm"),
                        row.number("minutes"),
                        row.number("flow"),
                        row.number("humidity"),
                        row.number("temperature")),
                row.text("agent", row.text("gas"))));
    }

    private static Vapour vapour(FigureRow row) {
        return new Vapour(
                row.text("id"),
                row.number("molar-mass"),
                row.number("density"),
                row.number("refractive-index"),
                row.number("boiling-point"),
                row.number("a"),
                row.number("b"),
                row.number("c"),
                !row.text("model-holds", "true").equals("false"));
    }

    private static AdsorptionModel model(FigureTable table) {
        return table.whole(() -> new AdsorptionModel(
                new AdsorptionConstants(
                        table.value("micropore-volume"),
                        table.value("affinity"),
                        table.value("gas-constant"),
                        table.value("polarizability-exponent"),
                        table.value("rate-offset"),
                        table.value("rate-base"),
                        table.value("rate-slope"),
                        table.value("velocity-offset"),
                        table.value("molar-volume-at-zero"),
                        table.value("standard-pressure")),
                new AdsorptionRange(
                        table.value("lowest-boiling-point"),
                        table.value("plain-humidity"),
                        table.value("highest-humidity"),
                        table.value("lowest-temperature"),
                        table.value("highest-temperature"),
                        table.value("lowest-concentration"),
                        table.value("highest-concentration"),
                        table.value("lowest-exit-fraction"),
                        table.value("highest-exit-fraction"),
                        table.value("worst-overrun"))));
    }

    private static RuleOfThumb thumb(FigureTable table) {
        return table.whole(() -> new RuleOfThumb(
                table.value("lowest-boiling-point"),
                table.value("reference-concentration"),
                table.value("reference-life"),
                table.value("reference-flow"),
                table.value("life-per-decade-down"),
                table.value("humid-from"),
                table.value("humid-share")));
    }

    private static StandardAtmosphere atmosphere(FigureTable table) {
        return table.whole(() -> new StandardAtmosphere(
                table.value("sea-level-pressure"),
                table.value("sea-level-temperature"),
                table.value("lapse-rate"),
                table.value("exponent"),
                table.value("highest-altitude")));
    }

    private static PackRules pack(FigureTable table) {
        return table.whole(() -> new PackRules(
                table.value("reserve"),
                table.value("quick-charge"),
                table.value("end-of-life"),
                table.value("yearly-hold-full"),
                table.value("yearly-hold-part"),
                table.value("cycles-short"),
                table.value("cycles-long"),
                table.value("charge-from"),
                table.value("charge-to")));
    }

    private static ColdTable cold(FigureTable table) {
        return table.whole(() -> new ColdTable(table.map(row -> new ColdTable.Row(
                row.number("temperature"), new Span(row.number("low"), row.number("likely"), row.number("high"))))));
    }

    /** The lines of the tables of shades that the code names in a set; without such a set there are none. */
    private static ShadeTable shades(List<Row> rows, String set) {
        Set<String> tables = rows.stream()
                .filter(row -> row instanceof Member member && member.set().equals(set))
                .map(row -> ((Member) row).item())
                .collect(Collectors.toSet());
        List<EyeShade> lines = rows.stream()
                .filter(EyeShade.class::isInstance)
                .map(EyeShade.class::cast)
                .filter(line -> tables.contains(line.table()))
                .toList();
        return new ShadeTable(
                lines.stream()
                        .map(line -> line.ref().citation())
                        .map(cited -> cited.cited(cited.source(), " "))
                        .findFirst()
                        .orElse("none"),
                lines.stream().allMatch(line -> line.ref().citation().confidence() == Confidence.CROSS_CHECKED),
                lines.stream()
                        .map(line -> new ShadeTable.Row(
                                line.process(),
                                ShadeTable.By.valueOf(line.by().toUpperCase(Locale.ROOT)),
                                line.from().doubleValue(),
                                line.to().doubleValue(),
                                line.shade().intValue()))
                        .toList());
    }
}
