package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Acts;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.engine.MutatedRules;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Act;
import org.fumewarden.model.Row;
import org.fumewarden.report.ShiftText;
import org.fumewarden.report.TaskPlots;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.whatif.Remedies;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * All rows of one kind of table end on a day and others follow: the advice of the day before is that of the old rows, and that of the day
 * rests on the new ones.
 */
@Tag("ci")
final class RenewedKindsTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 6);
    private static final String RULES = "rules";
    /** The tours, and stories of what no tour has. */
    private static final List<Path> STORIES = Stream.of(
                    Scenario.files(Path.of("scenarios/tours")).stream(),
                    Scenario.files(Path.of("src/test/resources/org/fumewarden/check/renewed")).stream(),
                    Stream.of(
                                    "us/US-ATMOSPHERE-020-5000-at",
                                    "us/US-CAUTION-240-electrode-160-at",
                                    "shared/SHARED-ATMOSPHERE-050-carbon-monoxide-at",
                                    "shared/SHARED-MEASURE-042-fume-by-benchmark",
                                    "fi/FI-first-task")
                            .map(story -> Path.of("scenarios", story + ".yaml")))
            .flatMap(some -> some)
            .toList();

    /** By kind, the cells in which the new row is another. */
    static final Map<String, String> CELLS = """
            acts says; adsorbed-vapours molar-mass density; adsorption-model value; agents name; bands value; benchmarks twa stel;
            blower-model low likely high; cartridge-tests minutes; clauses clause; danger-levels value; duties do;
            duty-vocabulary items; emitters principal; equipment name; factors factor; filter-use-times minutes months;
            filters highest; gas-filter-classes ppm; gas-filter-tests minutes; levers says; limits twa stel ceiling;
            low-boiler-times minutes; members items; none-listed searched; pack-behaviour value; pack-cold low likely high;
            published-exposures centre; published-highs high; ranges low high; service-life-rules value; shades shade; terms name;
            thresholds value; work-rates peak peak-speech
            """.strip()
            .lines()
            .flatMap(l -> Stream.of(l.split(";")))
            .map(String::strip)
            .filter(s -> !s.isEmpty())
            .collect(Collectors.toMap(s -> s.substring(0, s.indexOf(' ')), s -> s, (a, b) -> a, TreeMap::new));

    static Stream<String> kinds() {
        return CELLS.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theOldRowsDecideTheDayBeforeAndTheNewOnesOnTheDay(String kind) {
        List<String> cells = List.of(CELLS.get(kind).split(" "));
        Rules now = new Rules(Map.of());
        Rules other = new Rules(written(kind, row -> List.of(changed(row, cells))));
        Rules renewed = new Rules(written(kind, row -> List.of(with(row, "until"), with(changed(row, cells), "from"))));
        for (Path story : STORIES) {
            String old = now.told(kind, story, DAY);
            String fresh = other.told(kind, story, DAY);
            if (!old.equals(fresh)) {
                assertEquals(
                        now.told(kind, story, DAY.minusDays(1)),
                        renewed.told(kind, story, DAY.minusDays(1)),
                        story.toString());
                assertEquals(fresh, renewed.told(kind, story, DAY), story.toString());
                return;
            }
        }
        fail("no story tells a table of the kind " + kind);
    }

    private interface Change {
        List<Map<String, Object>> of(Map<String, Object> row);
    }

    private static Map<String, byte[]> written(String kind, Change change) {
        Yaml yaml = new Yaml(new SafeConstructor(new LoaderOptions()));
        Map<String, byte[]> files = new TreeMap<>();
        RuleFolder.shipped().files().forEach((name, bytes) -> {
            if (name.contains("/tables/")) {
                Map<String, Object> table = yaml.load(new String(bytes, StandardCharsets.UTF_8));
                if (kind.equals(table.get("kind")) && !table.containsKey("until")) {
                    List<Map<String, Object>> rows = new ArrayList<>();
                    ((List<?>) table.get("rows")).forEach(r -> {
                        Map<String, Object> row = plain(r);
                        rows.addAll(row.containsKey("until") ? List.of(row) : change.of(row));
                    });
                    table.put("rows", rows);
                    table.computeIfPresent("checked-on", (k, day) -> "2026-11-28");
                    files.put(name, yaml.dump(table).getBytes(StandardCharsets.UTF_8));
                }
            }
        });
        return files;
    }

    private static Map<String, Object> plain(Object row) {
        Map<String, Object> plain = new LinkedHashMap<>();
        ((Map<?, ?>) row)
                .forEach((k, v) -> plain.put(
                        k.toString(),
                        v instanceof java.util.Date d ? new java.sql.Date(d.getTime() + 43_200_000L).toString() : v));
        return plain;
    }

    private static Map<String, Object> with(Map<String, Object> row, String cell) {
        Map<String, Object> more = new Yaml().load(new Yaml().dump(row));
        more.put(cell, DAY.toString());
        return more;
    }

    private static Map<String, Object> changed(Map<String, Object> row, List<String> cells) {
        Map<String, Object> other = new LinkedHashMap<>(row);
        other.replaceAll((cell, value) -> cells.contains(cell) ? other(value) : value);
        return other;
    }

    private static Object other(Object value) {
        return value instanceof Number number
                ? (Object) (number.doubleValue() * (number.doubleValue() > 1 ? 2 : 0.5))
                : value instanceof List<?> list
                        ? list.stream().anyMatch(Number.class::isInstance)
                                ? list.stream().map(RenewedKindsTest::other).collect(Collectors.toList())
                                : new ArrayList<>(list.subList(Math.min(1, list.size()), list.size()))
                        : value + " anew";
    }

    /** The rules of the program over other tables. */
    private static final class Rules {
        private final RuleFolder folder;
        private final Map<String, Advisor> advisors = new TreeMap<>();

        Rules(Map<String, byte[]> changed) {
            Map<String, byte[]> files = new TreeMap<>(RuleFolder.shipped().files());
            files.putAll(changed);
            folder = RuleFolder.ofKept(RULES, files, false);
        }

        private Advisor advisor(String code) {
            return advisors.computeIfAbsent(
                    code, id -> new Advisor(MutatedRules.over(RuleBase.shipped(id), CodeBook.read(folder, id))));
        }

        /** What the sheet says, or whoever else reads tables of a kind. */
        String told(String kind, Path story, LocalDate on) {
            return switch (kind) {
                case "duty-vocabulary" -> Vocabularies.of(folder, on).facts().toString();
                case "levers" -> new Remedies(bench(story, on)).levers().toString();
                default -> advice(bench(story, on));
            };
        }

        private Bench bench(Path story, LocalDate on) {
            return new Bench(story, Map.of(), Optional.empty(), Optional.of(on), this::advisor);
        }

        /** What the advice says, and how long the unit in use would last. */
        private String advice(Bench bench) {
            Advice advice = bench.advise();
            List<Object> told = new ArrayList<>(List.of(
                    advice.accounts(), advice.respirators(), advice.checks(), advice.questions(), advice.unit()));
            advice.trail().steps().forEach(s -> told.add(s.says() + s.citation()));
            List<Row> rows = bench.advisor(bench.code()).base().rowsOn(advice.on());
            rows.stream()
                    .flatMap(row -> row instanceof Act act ? Stream.of(act.part()) : Stream.empty())
                    .distinct()
                    .forEach(part -> Acts.of(part, advice, rows).forEach(act -> told.add(act.says())));
            if (bench.tree(Map.of()).entries().containsKey("kit")) {
                Speech speech = Speech.of(Words.in("en"), bench.book().vocabulary());
                told.add(ShiftText.write(
                        TaskPlots.sheet(bench, advice),
                        advice,
                        speech,
                        bench.book().vocabulary()));
            }
            return told.stream().map(Object::toString).collect(Collectors.joining("\n"));
        }
    }
}
