package org.fumewarden.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LastFlow;
import org.fumewarden.upkeep.Store;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Over random registers advice, the plan of a shift, the due list and the record say the same of one unit. */
@Tag("ci")
class UnitOfOneMindTest {
    private static final Path TASK = Path.of("scenarios/tours/stainless-brackets.yaml");
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final int REGISTERS = Extent.of(24, 24, 240);
    private static final int ASKED_BY_COMMAND = 6;
    private static final Map<String, String> CLASSES =
            Map.of("powered", "th3", "airline", "airline-hood-4", "scba", "self-contained-positive");

    @TempDir
    private Path folder;

    private final Advisor advisor = Advisor.shipped("gb");
    private final List<Duty> duties = DutyBook.of(advisor.base().book(), DAY).duties();

    @Test
    void everyoneSaysTheSameOfEveryUnit() {
        int barred = 0;
        for (int seed = 0; seed < REGISTERS; seed++) {
            Random random = new Random(Extent.SEED + seed);
            String kind = List.of("powered", "airline", "scba").get(random.nextInt(3));
            Path file = folder.resolve("yard-" + seed + ".db");
            boolean out;
            boolean low;
            try (Store store = Store.open(file)) {
                fill(store, kind, random);
                DueReport due = new DueList(store, duties, DAY, Period.ZERO).compute(Map.of(), Optional.empty());
                boolean closed = due.closed().stream().anyMatch(c -> c.item().equals("U-1"));
                boolean late = due.owings().stream()
                        .anyMatch(o -> o.item().equals("U-1")
                                && o.doneBy().equals("examination")
                                && Set.of(DueStatus.OVERDUE, DueStatus.BEFORE_FIRST_USE)
                                        .contains(o.status()));
                out = closed || late;
                low = LastFlow.of(store, "U-1", DAY)
                        .filter(f -> f.flow().compareTo(new BigDecimal("160")) < 0)
                        .isPresent();
            }
            Map<String, String> task = new HashMap<>(
                    Map.of("kit.unit", "U-1", "kit.class-in-hand", CLASSES.get(kind), "kit.spark-arrestor", "true"));
            Bench bench = new Bench(TASK, task, Optional.of("gb"), Optional.of(DAY), id -> advisor);
            Advice advice = InUse.with(bench, () -> Store.read(file)).advise();
            UnitInHand unit = advice.unit().orElseThrow();
            String which = "seed " + seed + ", " + kind + ": " + unit + advice.register();
            assertEquals(out || low, unit.barred(), which);
            assertEquals(unit.barred(), !unit.heals().isEmpty(), which);
            assertTrue(
                    advice.questions().stream()
                            .noneMatch(q -> q.question().equals("examination-overdue")
                                    || q.question().equals("unit-withdrawn")),
                    which);
            barred += unit.barred() ? 1 : 0;
            if (seed < ASKED_BY_COMMAND) {
                sheetsAgree(file, kind, out, unit);
            }
        }
        assertTrue(barred > 4 && barred < REGISTERS - 2, barred + " barred of " + REGISTERS);
    }

    /** What a person reads: the sheet, the plan, the list and the card. */
    private static void sheetsAgree(Path file, String kind, boolean out, UnitInHand unit) {
        for (String command : List.of("advise", "endurance")) {
            CommandRun run = CommandRun.of(
                    command,
                    TASK.toString(),
                    "--store",
                    file.toString(),
                    "--on",
                    DAY.toString(),
                    "--set",
                    "kit.unit=U-1",
                    "--set",
                    "kit.class-in-hand=" + CLASSES.get(kind),
                    "--set",
                    "kit.spark-arrestor=true");
            assertEquals(unit.barred(), words(run).contains("unit u-1: do not use it"), command + " on " + unit + run);
        }
        CommandRun card = CommandRun.of(
                "record", "U-1", "--sheet", "card", "--code", "gb", "--on", DAY.toString(), "--store", file.toString());
        assertEquals(out, words(card).contains("! do not use. "), unit.toString() + card);
        assertEquals(out ? 3 : 0, card.exit(), card.toString());
    }

    private static String words(CommandRun run) {
        return run.out().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    /** Facts such as confined space and the agent stay open: they move no day. */
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
                        "disposable", List.of("false")));
        store.append(Draft.registering(unit, DAY.minusYears(1), "stores"), NOW);
        int entries = 1 + random.nextInt(4);
        LocalDate on = DAY.minusDays(32);
        for (int i = 0; i < entries; i++) {
            on = on.plusDays(random.nextInt(12));
            if (on.isAfter(DAY)) {
                break;
            }
            store.append(new Draft("U-1", on, "Sanna Teller", deed(random)), NOW);
        }
    }

    private static Details deed(Random random) {
        return switch (random.nextInt(9)) {
            case 0 -> new Details.Withdrawal("hose cut", true, false);
            case 1 -> new Details.Repair("new hose", "");
            case 2 ->
                Forms.details(
                        "before-use-check",
                        Map.of("result", random.nextBoolean() ? "passed" : "failed", "flow", "240"));
            default ->
                Forms.details(
                        "examination",
                        Map.of(
                                "result",
                                random.nextInt(6) > 0 ? "passed" : "failed",
                                "condition",
                                "sound",
                                "flow",
                                random.nextInt(8) > 0 ? "240" : "159",
                                "minimum-flow",
                                "160"));
        };
    }
}
