package org.fumewarden.endurance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.yaml.snakeyaml.Yaml;

/** The shipped tables as argument records, so that every figure is stated once. */
final class Tables {
    private static final Path FOLDER = Path.of("rules", "shared", "tables");

    private static final Map<String, Map<String, Object>> READ = new ConcurrentHashMap<>();

    private Tables() {}

    static Map<String, Object> table(String name) {
        return READ.computeIfAbsent(name, Tables::read);
    }

    private static Map<String, Object> read(String name) {
        Path shared = FOLDER.resolve(name + ".yaml");
        // A table of one code alone lies in its folder, without the code in its name.
        Path own = FOLDER.resolve("../../us/tables").resolve(name.replaceFirst("^us-", "") + ".yaml");
        try (var reader = Files.newBufferedReader(Files.exists(shared) ? shared : own)) {
            return new Yaml().load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked")
    static List<Map<String, Object>> rows(String name) {
        return (List<Map<String, Object>>) table(name).get("rows");
    }

    static Map<String, Object> row(String name, String column, Object value) {
        return rows(name).stream()
                .filter(row -> value.equals(row.get(column)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no row with " + column + " " + value));
    }

    static double number(Map<String, Object> row, String column) {
        return ((Number) row.get(column)).doubleValue();
    }

    static double value(String name, String id) {
        return number(row(name, "id", id), "value");
    }

    static Vapour vapour(String id) {
        Map<String, Object> row = row("adsorbed-vapours", "id", id);
        return new Vapour(
                id,
                number(row, "molar-mass"),
                number(row, "density"),
                number(row, "refractive-index"),
                number(row, "boiling-point"),
                number(row, "a"),
                number(row, "b"),
                number(row, "c"),
                !Boolean.FALSE.equals(row.get("model-holds")));
    }

    static AdsorptionModel model() {
        return new AdsorptionModel(
                new AdsorptionConstants(
                        model("micropore-volume"),
                        model("affinity"),
                        model("gas-constant"),
                        model("polarizability-exponent"),
                        model("rate-offset"),
                        model("rate-base"),
                        model("rate-slope"),
                        model("velocity-offset"),
                        model("molar-volume-at-zero"),
                        model("standard-pressure")),
                new AdsorptionRange(
                        model("lowest-boiling-point"),
                        model("plain-humidity"),
                        model("highest-humidity"),
                        model("lowest-temperature"),
                        model("highest-temperature"),
                        model("lowest-concentration"),
                        model("highest-concentration"),
                        model("lowest-exit-fraction"),
                        model("highest-exit-fraction"),
                        model("worst-overrun")));
    }

    private static double model(String id) {
        return value("adsorption-model", id);
    }

    static TestCapacity test(String mark, String gas) {
        return tests("gas-filter-tests", mark, gas);
    }

    static TestCapacity cartridge(String mark, String gas) {
        return tests("cartridge-tests", mark, gas);
    }

    private static TestCapacity tests(String table, String mark, String gas) {
        Map<String, Object> row = rows(table).stream()
                .filter(each -> mark.equals(each.get("mark")) && gas.equals(each.get("gas")))
                .findFirst()
                .orElseThrow();
        return new TestCapacity(
                mark,
                gas,
                number(row, "ppm"),
                number(row, "breakthrough-ppm"),
                number(row, "minutes"),
                number(row, "flow"),
                number(row, "humidity"),
                number(row, "temperature"));
    }

    static RuleOfThumb ruleOfThumb() {
        return new RuleOfThumb(
                thumb("lowest-boiling-point"),
                thumb("reference-concentration"),
                thumb("reference-life"),
                thumb("reference-flow"),
                thumb("life-per-decade-down"),
                thumb("humid-from"),
                thumb("humid-share"));
    }

    private static double thumb(String id) {
        return value("service-life-rules", id);
    }

    static LowBoilerTimes lowBoilerTimes() {
        return new LowBoilerTimes(rows("low-boiler-times").stream()
                .map(row ->
                        new LowBoilerTimes.Row((Integer) row.get("group"), number(row, "ppm"), number(row, "minutes")))
                .toList());
    }

    static ClassLimits classLimits() {
        return new ClassLimits(rows("gas-filter-classes").stream()
                .map(row ->
                        new ClassLimits.Row((String) row.get("type"), (Integer) row.get("class"), number(row, "ppm")))
                .toList());
    }

    static CodeCap useTime(String id) {
        Map<String, Object> row = row("filter-use-times", "id", id);
        return new CodeCap(
                number(row, "minutes"), id, (String) table("filter-use-times").get("clause"));
    }

    static WorkRate workRate(String id) {
        Map<String, Object> row = row("work-rates", "id", id);
        return new WorkRate(
                id,
                number(row, "minute-volume"),
                number(row, "peak"),
                number(row, "peak-speech"),
                row.containsKey("at-most-minutes")
                        ? OptionalDouble.of(number(row, "at-most-minutes"))
                        : OptionalDouble.empty());
    }

    static StandardAtmosphere atmosphere() {
        return new StandardAtmosphere(
                value("standard-atmosphere", "sea-level-pressure"),
                value("standard-atmosphere", "sea-level-temperature"),
                value("standard-atmosphere", "lapse-rate"),
                value("standard-atmosphere", "exponent"),
                value("standard-atmosphere", "highest-altitude"));
    }

    static CaseRange blower(String id) {
        Map<String, Object> row = row("blower-model", "id", id);
        return new CaseRange(number(row, "low"), number(row, "likely"), number(row, "high"));
    }

    static PackRules packRules() {
        return new PackRules(
                pack("reserve"),
                pack("quick-charge"),
                pack("end-of-life"),
                pack("yearly-hold-full"),
                pack("yearly-hold-part"),
                pack("cycles-short"),
                pack("cycles-long"),
                pack("charge-from"),
                pack("charge-to"));
    }

    private static double pack(String id) {
        return value("pack-behaviour", id);
    }

    static ColdTable cold() {
        return new ColdTable(rows("pack-cold").stream()
                .map(row -> new ColdTable.Row(
                        number(row, "temperature"),
                        new Span(number(row, "low"), number(row, "likely"), number(row, "high"))))
                .toList());
    }

    static ShadeTable shades(String name) {
        Map<String, Object> table = table(name);
        return new ShadeTable(
                table.get("source") + " " + table.get("clause"),
                "cross-checked".equals(table.get("confidence")),
                rows(name).stream()
                        .map(row -> new ShadeTable.Row(
                                (String) row.get("process"),
                                ShadeTable.By.valueOf(((String) row.get("by")).toUpperCase(Locale.ROOT)),
                                number(row, "at-least"),
                                number(row, "at-most"),
                                (Integer) row.get("shade")))
                        .toList());
    }
}
