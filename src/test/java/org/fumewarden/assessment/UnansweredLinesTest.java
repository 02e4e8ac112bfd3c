package org.fumewarden.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.fumewarden.Extent;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/**
 * Property: an estimate with a line left open is not below the estimate with any answer to that line, or is not made.
 * The rate of wire is not tried: no range of answers bounds it, so the highest fume rate held of the process counts.
 */
class UnansweredLinesTest {
    private static final int TASKS = Extent.of(50, 500, 10_000);
    private static final CodeBook BOOK = CodeBook.read(RuleFolder.at(Path.of("rules")), "gb");
    private static final ExposureTables FIGURES = new ExposureTables(BOOK.rows(LocalDate.of(2026, 11, 29)));
    private static final TaskReader READER = new TaskReader(BOOK.vocabulary());

    private static final Map<String, List<String>> TASK = new TreeMap<>(Map.of(
            "process", List.of("manual-metal-arc", "mag-solid-wire", "flux-cored-gas", "tig", "oxyfuel-cutting"),
            "base-metal", List.of("mild-steel", "stainless-steel", "aluminium-alloy"),
            "place", List.of("indoors", "enclosed", "outdoors"),
            "extraction", List.of("none", "unverified", "verified"),
            "time-on-task", List.of("5 min", "1 h", "4 h", "8 h", "12 h")));
    private static final Map<String, List<String>> ESTIMATE = new TreeMap<>(Map.of(
            "consumable", List.of("e70s", "er316", "e308", "e7018", "14mn-4cr", "e71t"),
            "arc-time", List.of("1 %", "30 %", "60 %", "100 %"),
            "room-volume", List.of("1 m3", "10 m3", "540 m3", "50000 m3"),
            "air-changes", List.of("0", "0.2", "3", "60"),
            "air-movement", List.of("smoke-hangs", "smoke-drifts", "smoke-carried")));
    private static final List<String> AGENTS =
            List.of("welding-fume", "manganese-respirable", "nickel", "chromium-vi", "ozone", "carbon-monoxide");

    private static OptionalDouble counts(Map<String, String> task, Map<String, String> estimate, String agent) {
        String text = "title: t\ncode: gb\non: 2026-11-29\ntask: " + map(task) + "\nestimate: " + map(estimate) + "\n";
        return RoomEstimate.of(READER.read(TaskTree.parse("task", text), "gb", Optional.empty()), FIGURES, agent)
                .screening()
                .flatMap(s -> s.governing().value())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static String map(Map<String, String> of) {
        List<String> all = new ArrayList<>();
        of.forEach((k, v) -> all.add(k + ": \"" + v + "\""));
        return "{" + String.join(", ", all) + "}";
    }

    private static Map<String, String> drawn(Map<String, List<String>> from, Random random, int openOf) {
        Map<String, String> found = new TreeMap<>();
        from.forEach((k, v) -> found.put(k, random.nextInt(openOf) == 0 ? "unknown" : v.get(random.nextInt(v.size()))));
        return found;
    }

    @Test
    void anOpenLineIsNeverMilderThanAnyAnswerToIt() {
        Random random = new Random(Extent.SEED);
        int held = 0;
        int raised = 0;
        for (int i = 0; i < TASKS; i++) {
            Map<String, String> task = drawn(TASK, random, 1000);
            Map<String, String> estimate = drawn(ESTIMATE, random, 3);
            for (String agent : AGENTS) {
                for (boolean ofTask : new boolean[] {true, false}) {
                    Map<String, List<String>> from = ofTask ? TASK : ESTIMATE;
                    Map<String, String> given = ofTask ? task : estimate;
                    List<String> names = List.copyOf(from.keySet());
                    String line = names.get(random.nextInt(names.size()));
                    Map<String, String> open = new TreeMap<>(given);
                    open.put(line, "unknown");
                    OptionalDouble unknown = counts(ofTask ? open : task, ofTask ? estimate : open, agent);
                    if (unknown.isEmpty()) {
                        continue;
                    }
                    for (String answer : from.get(line)) {
                        Map<String, String> told = new TreeMap<>(given);
                        told.put(line, answer);
                        OptionalDouble with = counts(ofTask ? told : task, ofTask ? estimate : told, agent);
                        if (with.isPresent()) {
                            held++;
                            raised += unknown.getAsDouble() > with.getAsDouble() ? 1 : 0;
                            assertTrue(
                                    unknown.getAsDouble() >= with.getAsDouble() * (1 - 1e-9),
                                    agent + " " + line + "=" + answer + ": " + unknown + " < " + with + "\n" + task
                                            + estimate);
                        }
                    }
                }
            }
        }
        assertTrue(held > 7 * TASKS && raised > held / 4, held + " compared, " + raised + " raised");
    }

    @Test
    void anOpenArcTimeCountsLikeAnArcThatBurnsAllTheTime() {
        Map<String, String> task = Map.of(
                "process", "mag-solid-wire", "base-metal", "mild-steel", "place", "indoors", "time-on-task", "4 h");
        Map<String, String> room = Map.of(
                "room-volume", "2000 m3", "air-changes", "3", "air-movement", "smoke-drifts", "consumable", "e70s");
        Map<String, String> all = new TreeMap<>(room);
        all.put("arc-time", "100 %");
        Map<String, String> less = new TreeMap<>(room);
        less.put("arc-time", "99 %");
        double open = counts(task, room, "ozone").orElseThrow();
        assertEquals(counts(task, all, "ozone").orElseThrow(), open, 1e-12);
        assertTrue(counts(task, less, "ozone").orElseThrow() < open);
    }
}
