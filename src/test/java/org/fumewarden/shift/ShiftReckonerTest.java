package org.fumewarden.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.endurance.ChangeTime;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.MeasuredBreakthrough;
import org.fumewarden.endurance.ShiftPlan;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Row;
import org.fumewarden.model.Soundness;
import org.fumewarden.model.Unit;
import org.fumewarden.task.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wiring keeps what the arithmetic promises, and names file and line of a wrong table. */
final class ShiftReckonerTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final RuleFolder RULES = RuleFolder.shipped();
    private static final List<Row> ROWS = CodeBook.read(RULES, "gb").rows(DAY);
    private static final ShiftTables TABLES = ShiftTables.of(ROWS);
    private static final List<String> AGENTS = List.of("toluene", "ammonia", "butanone", "isopropanol", "acetone");
    private static final int RUNS = 400;

    @TempDir
    private Path folder;

    /** EN 14387: A1 1000 ppm cyclohexane, 30 L/min, 70 min; AIHA rule of thumb 8 h; GUV-R 190: 50 h for mercury. */
    @Test
    void theShippedFiguresArriveUnchanged() {
        assertEquals(
                2100,
                TABLES.filterTests().stream()
                        .filter(test -> test.test().mark().equals("A1"))
                        .findFirst()
                        .orElseThrow()
                        .test()
                        .millilitresOfVapour(),
                1e-9);
        assertEquals(480, TABLES.thumb().referenceMinutes());
        assertEquals(3000, TABLES.caps().get("mercury").minutes());
        assertEquals(0.05, TABLES.packRules().reserve());
        assertTrue(TABLES.minimumShades().crossChecked());
    }

    @Test
    void noChangeTimeExceedsAnyBoundAndHarderAirNeverLengthensIt() {
        Random random = new Random(20260302);
        int timed = 0;
        for (int run = 0; run < RUNS; run++) {
            String agent = AGENTS.get(random.nextInt(AGENTS.size()));
            double ppm = 1 + random.nextDouble() * 400;
            double flow = 20 + random.nextDouble() * 180;
            double humidity = random.nextDouble() * 100;
            Map<String, MeasuredBreakthrough> maker = random.nextBoolean()
                    ? Map.of()
                    : Map.of(
                            agent,
                            new MeasuredBreakthrough(
                                    1 + random.nextDouble() * 600,
                                    1 + random.nextDouble() * 500,
                                    1 + random.nextDouble() * 40,
                                    20 + random.nextDouble() * 100,
                                    0,
                                    random.nextDouble() * 100,
                                    20,
                                    "random"));
            List<ChangeTime> times = time(agent, ppm, flow, humidity, maker).toList();
            double harder = time(agent, ppm * 1.5, flow, humidity, maker)
                    .mapToDouble(ChangeTime::minutes)
                    .max()
                    .orElse(0);
            double wetter = time(agent, ppm, flow, Math.min(100, humidity + 20), maker)
                    .mapToDouble(ChangeTime::minutes)
                    .max()
                    .orElse(0);
            for (ChangeTime each : times) {
                timed++;
                assertTrue(each.minutes() <= each.basis().minutes(), agent);
                each.declined().stream()
                        .flatMap(refused -> refused.shortens().stream())
                        .forEach(cap -> assertTrue(each.minutes() <= cap.minutes(), agent));
                maker.values().forEach(line -> assertTrue(each.minutes() <= line.minutes(), agent));
                each.others().forEach(other -> assertTrue(each.minutes() <= other.minutes(), agent));
                assertTrue(each.minutes() <= 480, "one shift");
                assertTrue(harder <= each.minutes() && wetter <= each.minutes(), agent + " " + ppm + " " + flow);
            }
        }
        assertTrue(timed > RUNS / 20, "only " + timed + " runs had a change time");
    }

    /** A clean filter that already stands at its warning stage lasts no shift; one whose figures are missing does not stop the plan. */
    @Test
    void filterAtItsWarningStageBarsThePlan() {
        assertTrue(plan(List.of(measure("warning-pressure", "kit.warning-pressure", 400)))
                .value()
                .isPresent());
        assertTrue(plan(List.of()).value().isPresent());
        assertEquals(
                Soundness.OUTSIDE_TABLE,
                plan(List.of(measure("warning-pressure", "kit.warning-pressure", 200)))
                        .status());
    }

    private static Reckoning<ShiftPlan> plan(List<Input> more) {
        List<Input> inputs = new ArrayList<>(List.of(
                new Exposure(
                        "welding-fume",
                        Averaging.TWA,
                        decimal(2),
                        Unit.MG_M3,
                        "value as given",
                        false,
                        "exposures.0.twa"),
                measure("time-on-task", "task.time-on-task", 300),
                measure("temperature", "atmosphere.temperature", 20),
                measure("measured-flow", "kit.measured-flow", 190),
                measure("minimum-design-flow", "kit.minimum-design-flow", 170),
                measure("battery-charge", "kit.battery-charge", 100),
                measure("filters-fitted", "kit.filters-fitted", 1),
                measure("filter-clean-pressure", "kit.filter-clean-pressure", 200),
                measure("filter-area", "kit.filter-area", 2000)));
        inputs.addAll(more);
        EnduranceCurve curve = new EnduranceCurve(
                "long",
                List.of(new EnduranceCurve.Point(0, 9), new EnduranceCurve.Point(5, 6)),
                EnduranceCurve.Scale.OWN,
                true);
        return new ShiftReckoner(
                        new Task(
                                "plan",
                                "gb",
                                DAY,
                                inputs,
                                List.of(),
                                "task",
                                Map.of(),
                                List.of(curve),
                                Map.of(),
                                List.of()),
                        ROWS,
                        TABLES,
                        Set.of())
                .reckon()
                .plan();
    }

    @Test
    void aWrongTableNamesItsFileAndLine() throws IOException {
        for (var file : RULES.files().entrySet()) {
            Path copy = folder.resolve(file.getKey());
            Files.createDirectories(copy.getParent());
            Files.write(copy, file.getValue());
        }
        Path table = folder.resolve("shared/tables/pack-behaviour.yaml");
        String text = Files.readString(table).replace("id: reserve, value: 0.05", "id: reserve, value: five");
        Files.writeString(table, text);
        int line = text.substring(0, text.indexOf("five")).split("\n", -1).length;
        InputException fault = assertThrows(InputException.class, () -> CodeBook.read(RuleFolder.at(folder), "gb"));
        assertTrue(fault.getMessage().contains("pack-behaviour.yaml:" + line), fault.getMessage());
        assertTrue(fault.getMessage().contains("five"), fault.getMessage());
    }

    /** Carbon lets carbon monoxide through, so it takes no room from toluene; a second vapour does (from memory). */
    @Test
    void carbonMonoxideStopsNoChangeTimeOfAVapour() {
        assertEquals(1, timed("toluene", "carbon-monoxide").size());
        assertEquals(0, timed("toluene", "xylene").size());
        assertTrue(reckon(vapours("toluene", "carbon-monoxide"), Set.of("toluene"), Map.of()).remarks().stream()
                .anyMatch(r -> r.startsWith("No filter here protects against carbon monoxide")));
    }

    private static List<ChangeTime> timed(String... agents) {
        return reckon(vapours(agents), Set.of(agents[0]), Map.of()).gases().stream()
                .flatMap(gas -> gas.time().value().stream())
                .toList();
    }

    private static List<Input> vapours(String... agents) {
        List<Input> inputs = bed(100, 40);
        for (String agent : agents) {
            double ppm = agent.equals(agents[0]) ? 100 : 2;
            inputs.add(new Exposure(
                    agent, Averaging.TWA, decimal(ppm), Unit.PPM, "value as given", false, "exposures.0.twa"));
        }
        return inputs;
    }

    private static Stream<ChangeTime> time(
            String agent, double ppm, double flow, double humidity, Map<String, MeasuredBreakthrough> maker) {
        List<Input> inputs = bed(flow, humidity);
        inputs.add(
                new Exposure(agent, Averaging.TWA, decimal(ppm), Unit.PPM, "value as given", false, "exposures.0.twa"));
        return reckon(inputs, Set.of(agent), maker).gases().stream().flatMap(gas -> gas.time().value().stream());
    }

    private static List<Input> bed(double flow, double humidity) {
        return new ArrayList<>(List.of(
                measure("humidity", "atmosphere.humidity", humidity),
                measure("temperature", "atmosphere.temperature", 20),
                measure("measured-flow", "kit.measured-flow", flow),
                measure("filters-fitted", "kit.filters-fitted", 2),
                measure("filter-carbon", "kit.filter-carbon", 150),
                measure("carbon-density", "kit.carbon-density", 0.45),
                measure("carbon-area", "kit.carbon-area", 80),
                new Answer("filter-used", "false", "kit.filter-used"),
                new Answer("low-boiler-group", "1", "kit.low-boiler-group")));
    }

    private static ShiftSheet reckon(
            List<Input> inputs, Set<String> demanded, Map<String, MeasuredBreakthrough> maker) {
        return new ShiftReckoner(
                        new Task("random", "gb", DAY, inputs, List.of(), "task", Map.of(), List.of(), maker, List.of()),
                        ROWS,
                        TABLES,
                        demanded)
                .reckon();
    }

    private static Measure measure(String id, String path, double value) {
        return new Measure(id, decimal(value), "as the question", path);
    }

    private static BigDecimal decimal(double value) {
        return BigDecimal.valueOf(value);
    }
}
