package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One shift on the command line: it lasts, it does not, or it is refused. */
final class EnduranceCommandTest {
    private static final String LASTS = "scenarios/tours/shift-that-lasts.yaml";
    private static final String TOO_LONG = "scenarios/tours/shift-too-long.yaml";
    private static final String SOLVENT = "scenarios/tours/shift-with-solvent.yaml";

    private static final String MAKER = "scenarios/tours/shift-with-maker-data.yaml";
    private static final String CUTTING = "scenarios/us/US-CAUTION-250-cutting-25-at.yaml";

    @TempDir
    private Path folder;

    /** Own curve, 6 h at 320 Pa, 20 C: 5 h of wear. Dust 2.05 mg/m3 x 0.19 m3/min x 300 min = 117 mg. */
    @Test
    void aShiftThatLastsSaysSoFirst() {
        CommandRun run = CommandRun.of("endurance", LASTS, "--svg", folder.toString());
        assertEquals(0, run.exit(), run.err());
        assertTrue(line(run, 2).startsWith("Lasts the shift"), run.out());
        assertAll(
                () -> has(run, "117 mg of dust collect on the filter set"),
                () -> has(run, "Until the pack is down to its reserve: 6 h (by your own curve)."),
                () -> has(run, "The air flow covers the breathing: 190 L/min"),
                () -> has(run, "320 Pa 6 h"),
                () -> ends(run));
        assertTrue(Files.exists(folder.resolve("run-time.svg")));
    }

    /** 8 h of wear less 6 h of run time: 120 min short; one more pack of 6 h covers it. */
    @Test
    void aShiftThatDoesNotLastNamesTheSmallestChangeFirst() {
        CommandRun run = CommandRun.of("endurance", TOO_LONG);
        assertEquals(3, run.exit(), run.err());
        has(run, "DOES NOT LAST THE SHIFT: 2 h of wear too short.");
        has(run, "Smallest change: carry 1 more charged pack.");
        ends(run);
        assertEquals(
                0,
                CommandRun.of("endurance", TOO_LONG, "--set", "kit.spare-packs=1")
                        .exit());
    }

    @Test
    void aShiftWithAFigureMissingIsRefusedAndNamesIt() {
        CommandRun run = CommandRun.of("endurance", SOLVENT);
        assertEquals(3, run.exit(), run.err());
        assertTrue(line(run, 2).startsWith("NO PLAN FOR THE SHIFT"), run.out());
        has(run, "The change time cannot be calculated. Add to the task file: humidity (atmosphere.humidity).");
        ends(run);
    }

    /** AirflowCheck: below the minimum design flow the unit is barred (common practice, no source). */
    @Test
    void aWeakBlowerGetsNoPlan() {
        CommandRun run = CommandRun.of("endurance", LASTS, "--set", "kit.measured-flow=169 L/min");
        assertEquals(3, run.exit(), run.err());
        has(run, "NO PLAN FOR THE SHIFT: The unit delivers 169 L/min, below its minimum design flow of 170 L/min");
    }

    /** Invented maker's line: 240 min at 5 ppm; the test of type E ends at 5 ppm, ten times the 0.5 ppm of EH40. */
    @Test
    void theMakersTimeCarriesAChangeTimeAndIsNeverStretched() {
        CommandRun run = CommandRun.of("endurance", MAKER);
        assertEquals(0, run.exit(), run.err());
        has(run, "Change after 4 h of use at the latest");
        has(run, "Basis: measured breakthrough");
        CommandRun harder = CommandRun.of("endurance", MAKER, "--set", "kit.measured-flow=201 L/min");
        assertEquals(3, harder.exit(), harder.err());
        has(harder, "harder than the measurement in invented data sheet, line 3 in flow through one filter");
    }

    @Test
    void aWrongLineOfTheMakerIsNamedWithItsPlace() throws IOException {
        Path file = folder.resolve("task.yaml");
        String text = Files.readString(Path.of(MAKER))
                .replace(
                        "shift-that-lasts.yaml", Path.of(LASTS).toAbsolutePath().toString())
                .replace("concentration: 5 ppm", "concentration: 13 mg/m3");
        Files.writeString(file, text);
        CommandRun run = CommandRun.of("endurance", file.toString());
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("must be in ppm"), run.err());
        assertTrue(run.err().contains("Convert the manufacturer's figure to ppm."), run.err());
    }

    /** 29 CFR 1910.133(a)(5): oxygen cutting of 25 mm plate, shade 4; a current says nothing about it. */
    @Test
    void aCurrentNeverStandsInForAThickness() {
        has(CommandRun.of("endurance", CUTTING), "Shade 4 or darker");
        has(
                CommandRun.of("endurance", "scenarios/us/US-CAUTION-240-not.yaml"),
                "the shade depends on metal thickness, which is not given");
        has(CommandRun.of("endurance", LASTS), "filter shades for this country are not included");
    }

    /** EN 14387, K1: 1000 ppm x 30 L/min x 50 min = 1500 ml; at 500 ppm and 22 L/min 1500 / 11 = 136.4 min. */
    @Test
    void aGasFilterHasItsChangeTimeWithItsBasis() {
        CommandRun run = ammonia("500 ppm");
        has(run, "Change after 2 h 16 min of use at the latest");
        has(run, "Basis: test capacity, the shortest of 2 times.");
        has(run, "Another limit, longer (longest use that the code allows): 8 h. One shift (GUV-R-190, ");
        ends(run);
    }

    /** EN 14387, K1: use limit 1000 ppm (GUV-R 190 Table 13), 500 ppm taken as the stricter figure. */
    @Test
    void aboveTheLimitOfItsClassThereIsNoChangeTime() {
        has(ammonia("501 ppm"), "No change time: The level is above the 500 ppm");
    }

    @Test
    void aSolventWithAllFiguresHasAModelledBreakthrough() {
        CommandRun run = CommandRun.of(
                "endurance",
                SOLVENT,
                "--svg",
                folder.toString(),
                "--set",
                "atmosphere.humidity=40 %",
                "--set",
                "kit.filters-fitted=2",
                "--set",
                "kit.filter-carbon=200 g",
                "--set",
                "kit.carbon-density=0.45 g/cm3",
                "--set",
                "kit.carbon-area=80 cm2");
        assertAll(
                () -> has(run, "Model for toluene: 100 ppm at 95 L/min through 200 g"),
                () -> has(run, "The rule of thumb may only be used together with another method."),
                () -> has(run, "Breakthrough of toluene"),
                () -> ends(run));
        assertTrue(Files.exists(folder.resolve("breakthrough-toluene.svg")), run.err());
    }

    @Test
    void agentsThatNoFilterHoldsAreSaid() {
        CommandRun run = CommandRun.of("endurance", SOLVENT, "--set", "exposures.2.agent=carbon-monoxide");
        has(run, "No filter protects against carbon monoxide. Use supplied air.");
        CommandRun other = CommandRun.of("endurance", SOLVENT, "--set", "kit.filter-mark=K1-P3");
        has(other, "The filter marked K1-P3 does not protect against toluene, which needs type A1.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "filter-mark: A2-P3|filter-mark: Q9|kit.filter-mark|cannot be read|Write it like A2B2-P3",
                "filter-mark: A2-P3|filter-mark: A2-P3\\n  filter-expiry: soon|kit.filter-expiry|must be a day|2026-03-02",
                "hours: {0: 9, 2: 7}|hours: {0: 7, 2: 9}|kit.endurance.0.hours|cannot run longer|check the hours",
                "hours: {0: 9, 2: 7}|hours: {0: 9}|kit.endurance.0.hours|needs two or more|measure at another",
                "hours: {0: 9, 2: 7}|hours: {full: 9, 2: 7}|kit.endurance.0.hours.full|must be a filter resistance|such as 300 Pa",
                "ends-at: reserve|ends-at: reserv|kit.endurance.0.ends-at|reserv|reserve",
                "pack: long, |''|kit.endurance.0|needs pack|pack: P-07",
                "battery-charge: 80 %|battery-charge: 120 %|kit.battery-charge|above 100 %|check the number",
                "battery-energy: 40 Wh|battery-energy: 40 volts|kit.battery-energy|volts|Wh",
                "battery-age: 1 year|battery-age: -1 year|kit.battery-age|negative|check the reading",
                "battery-age: 1 year|batery-age: 1 year|kit.batery-age|is not a name used here|battery-age"
            })
    void aWrongFigureOfTheUnitNamesItsLine(String good, String bad, String path, String found, String maybe)
            throws IOException {
        String whole = """
                title: A hood in the bracket shop of Tarn Haven
                code: gb
                on: 2026-03-02
                task: {process: tig}
                kit:
                  filter-mark: A2-P3
                  battery-charge: 80 %
                  battery-energy: 40 Wh
                  battery-age: 1 year
                  endurance:
                    - {pack: long, ends-at: reserve, hours: {0: 9, 2: 7}}
                """;
        assertTrue(whole.contains(good), good);
        String text = whole.replace(good, bad.replace("\\n", "\n"));
        CommandRun run = CommandRun.of("endurance", write(text).toString());
        assertEquals(2, run.exit(), run.out() + run.err());
        int line = 1 + whole.substring(0, whole.indexOf(good)).split("\n", -1).length - 1;
        assertTrue(run.err().contains("task.yaml:" + (bad.contains("\\n") ? line + 1 : line)), run.err());
        assertTrue(run.err().contains(path) && run.err().contains(found), run.err());
        assertTrue(StringUtils.containsIgnoreCase(run.err(), maybe), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    private CommandRun ammonia(String level) {
        return CommandRun.of(Stream.concat(
                        Stream.of("endurance", LASTS),
                        Stream.of(
                                        "exposures.ammonia.twa=" + level,
                                        "atmosphere.humidity=50 %",
                                        "kit.blower=false",
                                        "kit.filter-mark=K1-P3",
                                        "kit.filter-used=false")
                                .flatMap(change -> Stream.of("--set", change)))
                .toArray(String[]::new));
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("task.yaml"), text);
    }

    private static String line(CommandRun run, int index) {
        return run.out().split("\n")[index];
    }

    private static void has(CommandRun run, String words) {
        assertTrue(flat(run.out()).contains(flat(words)), () -> words + "\nnot in\n" + run.out() + run.err());
    }

    private static void ends(CommandRun run) {
        assertTrue(flat(run.out()).strip().endsWith(flat(Advice.CLOSING)), run.out());
    }

    private static String flat(String text) {
        return String.join(" ", Arrays.asList(text.strip().split("\\s+")));
    }
}
