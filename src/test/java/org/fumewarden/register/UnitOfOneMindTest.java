package org.fumewarden.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.fumewarden.whatif.Bench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Over random registers advice, the plan of a shift and the due list say the same of one unit. */
class UnitOfOneMindTest {
    private static final Path TASK = Path.of("scenarios/tours/stainless-brackets.yaml");
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final int REGISTERS = Integer.getInteger("fumewarden.registers", 60);
    private static final Map<String, String> CLASSES =
            Map.of("powered", "th3", "airline", "airline-hood-4", "scba", "self-contained-positive");

    @TempDir
    private Path folder;

    private final Advisor advisor = new Advisor(RuleBase.shipped("gb"));

    @Test
    void adviceAndDueListAgreeOnEveryUnit() {
        List<org.fumewarden.upkeep.Duty> duties =
                DutyBook.of(advisor.base().book(), DAY).duties();
        int barred = 0;
        int free = 0;
        for (int seed = 0; seed < REGISTERS; seed++) {
            Random random = new Random(seed);
            String kind = List.of("powered", "airline", "scba").get(random.nextInt(3));
            Path file = folder.resolve("yard-" + seed + ".db");
            boolean closed;
            boolean late;
            try (Store store = Store.open(file)) {
                fill(store, kind, random);
                DueReport due = new DueList(store, duties, DAY, Period.ZERO).compute(Map.of(), Optional.empty());
                closed = due.closed().stream().anyMatch(c -> c.item().equals("U-1"));
                late = due.owings().stream()
                        .anyMatch(o -> o.item().equals("U-1")
                                && o.doneBy().equals("examination")
                                && Set.of(DueStatus.OVERDUE, DueStatus.BEFORE_FIRST_USE)
                                        .contains(o.status()));
            }
            Map<String, String> task = Map.of(
                    "kit.unit", "U-1",
                    "kit.class-in-hand", CLASSES.get(kind),
                    "kit.measured-flow", "180 L/min",
                    "kit.minimum-design-flow", "160 L/min",
                    "kit.spark-arrestor", "true");
            Bench bench = new Bench(TASK, task, Optional.of("gb"), Optional.of(DAY), id -> advisor);
            Advice advice = InUse.with(bench, () -> Store.read(file)).advise();
            UnitInHand unit = advice.unit().orElseThrow();
            String which = "seed " + seed + ", " + kind + ": " + unit;
            assertEquals(closed || late, unit.barred(), which);
            assertEquals(unit.barred(), !unit.heals().isEmpty(), which);
            assertTrue(
                    advice.respirators().stream().noneMatch(r -> r.reasons().stream()
                            .anyMatch(why -> why.rule().matches("SHARED-EXCLUSION-24[024]"))),
                    "the class answers for itself, " + which);
            barred += unit.barred() ? 1 : 0;
            free += unit.barred() ? 0 : 1;
            if (seed % 20 == 0) {
                sheetsAgree(file, kind, unit);
            }
        }
        assertTrue(barred > 5 && free > 5, barred + " barred and " + free + " free of " + REGISTERS);
    }

    /** What a person reads: the sheet of advise and the plan of endurance. */
    private static void sheetsAgree(Path file, String kind, UnitInHand unit) {
        for (String command : List.of("advise", "endurance")) {
            CommandRun run = CommandRun.of(
                    command,
                    TASK.toString(),
                    "--store",
                    file.toString(),
                    "--set",
                    "kit.unit=U-1",
                    "--set",
                    "kit.class-in-hand=" + CLASSES.get(kind),
                    "--set",
                    "kit.measured-flow=180 L/min",
                    "--set",
                    "kit.minimum-design-flow=160 L/min",
                    "--set",
                    "kit.spark-arrestor=true");
            assertEquals(
                    unit.barred(),
                    run.out()
                            .toLowerCase(java.util.Locale.ROOT)
                            .replaceAll("\\s+", " ")
                            .contains("unit u-1: do not use it"),
                    command + " on " + unit + "\n" + run.out() + run.err());
        }
    }

    private static void fill(Store store, String kind, Random random) {
        Item.Unit unit = new Item.Unit(
                "U-1",
                "set of the slipway",
                "",
                Optional.of(new BigDecimal("160")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(
                        "face-seal", List.of(kind.equals("scba") ? "tight" : "loose"),
                        "air-delivery", List.of(kind),
                        "use-mode", List.of("routine"),
                        "disposable", List.of("false"),
                        "shared", List.of("false"),
                        "air-source", List.of("compressor-fixed"),
                        "compressor-oil-lubricated", List.of("false"),
                        "filter-kind", List.of(kind.equals("powered") ? "particle" : "none")));
        store.append(Draft.registering(unit, DAY.minusYears(1), "stores"), NOW);
        int entries = random.nextInt(5);
        LocalDate on = DAY.minusDays(200);
        for (int i = 0; i < entries; i++) {
            on = on.plusDays(random.nextInt(60));
            if (on.isAfter(DAY)) {
                break;
            }
            store.append(new Draft("U-1", on, "Sanna Teller", deed(random)), NOW);
        }
    }

    private static Details deed(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> new Details.Withdrawal("hose cut", true, false);
            case 1 -> new Details.Repair("new hose", "");
            case 2 -> check(random.nextBoolean() ? "passed" : "failed");
            default -> examination(random.nextInt(4) > 0 ? "passed" : "failed");
        };
    }

    private static Details check(String result) {
        return Forms.details("before-use-check", Map.of("result", result, "flow", "171", "minimum-flow", "160"));
    }

    private static Details examination(String result) {
        return Forms.details(
                "examination",
                Map.of(
                        "result", result,
                        "condition", "sound",
                        "filter-condition", "clean",
                        "battery-condition", "holds charge",
                        "flow", "171",
                        "minimum-flow", "160",
                        "signature", "S. T."));
    }
}
