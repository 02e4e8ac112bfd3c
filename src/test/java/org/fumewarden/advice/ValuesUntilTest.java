package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.codes.CodeSummary;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TableFile;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Limit;
import org.fumewarden.task.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sheet says until when its values are in force: on no day before does any table change what it says. */
final class ValuesUntilTest {
    private static final int TOURS = Extent.of(1, 5, 20);
    private static final int AGENTS = Extent.of(1, Extent.ALL, Extent.ALL);
    private static final int DAYS = Extent.of(3, Extent.ALL, Extent.ALL);
    private static final String CODE = "gb";
    private static final Path RULES = Path.of("rules");
    private static final LocalDate END = LocalDate.of(2031, 5, 6);
    private static final LocalDate FIRST = LocalDate.of(2018, 1, 1);
    private static final String TOLD = """
            title: One agent
            code: %s
            on: %s
            task: {process: manual-metal-arc, base-metal: stainless-steel, coating: none, place: indoors, extraction: verified, sector: %s}
            exposures:
              - {agent: %s, twa: 0.03 %s}
            """;

    /**
     * About each day on which a row or rule begins or ends under a code: where the answer of the day is not that of the day
     * before, the sheet of the day before says that its values end with it; a year before a sheet says so or a day earlier.
     */
    @ParameterizedTest
    @MethodSource("codes")
    void noAnswerChangesOnADayThatTheSheetBeforeDidNotName(String code) throws IOException {
        Advisor advisor = Advisor.shipped(code);
        int compared = 0;
        int changed = 0;
        for (Task task : tasks(code, advisor)) {
            for (LocalDate day : days(advisor.base())) {
                Optional<Advice> before = advice(advisor, task, day.minusDays(1));
                Optional<Advice> on = advice(advisor, task, day);
                if (before.isEmpty() || on.isEmpty()) {
                    continue;
                }
                compared++;
                changed += held(task, before.get(), on.get(), day) ? 1 : 0;
                if (before.get().endsSoon().equals(Optional.of(day.minusDays(1)))) {
                    assertTrue(
                            on.get()
                                    .endsSoon()
                                    .filter(last -> last.isBefore(day))
                                    .isEmpty(),
                            "past " + day);
                    advice(advisor, task, day.minusYears(1))
                            .ifPresent(earlier -> assertTrue(
                                    earlier.endsSoon()
                                            .filter(last -> last.isBefore(day))
                                            .isPresent(),
                                    task.title() + ", a year before " + day));
                }
            }
        }
        System.out.println(code + ": days compared " + compared + ", answers that changed " + changed);
        assertTrue(compared > 0, code);
    }

    /** When all tables of a kind end on one day, no tour answers otherwise on it without having named the day before. */
    @ParameterizedTest
    @MethodSource("kinds")
    void theDayOnWhichAnyKindOfTableEndsIsNamed(String kind) throws IOException {
        Map<String, byte[]> files = new TreeMap<>(RuleFolder.at(RULES).files());
        RuleBase.shipped(CODE).book().tables().stream()
                .filter(t -> t.kind().equals(kind))
                .map(TableFile::file)
                .map(file -> file.substring(file.indexOf('/') + 1))
                .forEach(file -> files.computeIfPresent(file, (name, bytes) -> ended(bytes)));
        Advisor advisor = new Advisor(RuleBase.compiled(RuleFolder.of("rules", files), CODE));
        int changed = 0;
        for (Task task : tasks(CODE, advisor)) {
            Optional<Advice> before = advice(advisor, task, END.minusDays(1));
            Optional<Advice> on = advice(advisor, task, END);
            if (before.isPresent() && on.isPresent()) {
                changed += held(task, before.get(), on.get(), END) ? 1 : 0;
            }
        }
        System.out.println(kind + ": answers that changed " + changed);
    }

    /**
     * An agent for which a row begins or ends is told on the day before: what it is held against, and whether it is held against
     * anything at all, changes on no day that the sheet did not name.
     */
    @ParameterizedTest
    @MethodSource("codes")
    void aRowThatBeginsEndsTheSheetThatTellsItsAgent(String code) {
        Advisor advisor = Advisor.shipped(code);
        Map<String, TreeSet<LocalDate>> turns = new TreeMap<>();
        Map<String, String> units = new TreeMap<>();
        advisor.base().book().tables().stream()
                .flatMap(t -> t.rows().stream())
                .filter(row -> row.row() instanceof Limit)
                .forEach(row -> {
                    Limit limit = (Limit) row.row();
                    units.put(limit.agent(), limit.unit().symbol());
                    Stream.of(row.from(), row.until())
                            .filter(d -> d.isAfter(LocalDate.EPOCH) && d.isBefore(CodeSummary.NEVER))
                            .forEach(d -> turns.computeIfAbsent(limit.agent(), a -> new TreeSet<>())
                                    .add(d));
                });
        List<String> wrong = new ArrayList<>();
        turns.keySet().retainAll(Extent.sample(List.copyOf(turns.keySet()), agent -> agent, AGENTS));
        turns.forEach((agent, days) -> days.forEach(day -> {
            for (String sector : List.of("general-industry", "construction")) {
                Optional<Advice> before = told(code, day.minusDays(1), sector, agent, units.get(agent));
                Optional<Advice> on = told(code, day, sector, agent, units.get(agent));
                if (before.isPresent()
                        && on.isPresent()
                        && !before.get().endsSoon().equals(Optional.of(day.minusDays(1)))
                        && !(held(before.get()).equals(held(on.get()))
                                && Upshot.of(before.get())
                                        .unlike(Upshot.of(on.get()))
                                        .isEmpty())) {
                    wrong.add(agent + ", " + sector + ", " + day + ": "
                            + before.get().endsSoon());
                }
            }
        }));
        assertEquals(List.of(), wrong);
    }

    /** Nickel and diesel get their European limits on 5 April 2024 and 21 February 2023 (Directives 2022/431 and 2019/130). */
    @Test
    void anAgentThatIsNotHeldOnADayEndsTheSheetBeforeItsLimitBegins() {
        assertEquals(
                Optional.of(LocalDate.of(2024, 4, 4)),
                told("fi", LocalDate.of(2024, 4, 4), "general-industry", "nickel", "mg/m3")
                        .orElseThrow()
                        .endsSoon());
        assertEquals(
                Optional.of(LocalDate.of(2023, 2, 20)),
                told("fi", LocalDate.of(2023, 2, 20), "general-industry", "diesel-exhaust", "mg/m3")
                        .orElseThrow()
                        .endsSoon());
    }

    /** What each agent is held against, as printed. */
    private static List<String> held(Advice advice) {
        return advice.accounts().stream()
                .map(line -> line.account().agent() + " " + line.account().averaging() + " "
                        + line.account().against() + " " + line.heldAgainst())
                .sorted()
                .toList();
    }

    private static Optional<Advice> told(String code, LocalDate on, String sector, String agent, String unit) {
        try {
            return Optional.of(Bench.ofText("task", TOLD.formatted(code, on, sector, agent, unit), Advisor::shipped)
                    .advise());
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private static byte[] ended(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        String dated = text.lines().anyMatch(l -> l.startsWith("until:"))
                ? text
                : text.replaceFirst("(?m)^rows:", "until: " + END + "\nrows:");
        return dated.getBytes(StandardCharsets.UTF_8);
    }

    /** True when the answer of the day is another than that of the day before, which the sheet before named. */
    private static boolean held(Task task, Advice before, Advice on, LocalDate day) {
        List<String> unlike = Upshot.of(before).unlike(Upshot.of(on));
        if (!unlike.isEmpty()) {
            assertEquals(
                    Optional.of(day.minusDays(1)), before.endsSoon(), task.title() + ", " + day + " changes " + unlike);
        }
        return !unlike.isEmpty();
    }

    static List<String> codes() {
        return RuleFolder.shipped().codes();
    }

    static List<String> kinds() {
        List<String> kinds = RuleBase.shipped(CODE).book().tables().stream()
                .map(TableFile::kind)
                .filter(kind -> !kind.equals("questions"))
                .distinct()
                .sorted()
                .toList();
        return Extent.sample(kinds, kind -> kind, Extent.of(4, Extent.ALL, Extent.ALL));
    }

    /** Every tour under the code; a tour that names a thing of another code is none of it. */
    private static List<Task> tasks(String code, Advisor advisor) throws IOException {
        List<Task> tasks = new ArrayList<>();
        for (Path tour : Extent.sample(BeforeSigningTest.tours().toList(), Path::toString, TOURS)) {
            try {
                tasks.add(new Bench(tour, Map.of(), Optional.empty(), Optional.empty(), id -> advisor)
                        .task(code, Map.of()));
            } catch (InputException e) {
                continue;
            }
        }
        assertTrue(!tasks.isEmpty(), code + " " + tasks.size());
        return tasks;
    }

    /** The days on which a row or a rule begins or ends, since the time of the tours. */
    private static List<LocalDate> days(RuleBase base) {
        Set<LocalDate> days = Stream.concat(
                        base.book().tables().stream()
                                .flatMap(t -> t.rows().stream())
                                .flatMap(row -> Stream.of(row.from(), row.until())),
                        base.cards().values().stream().flatMap(rule -> Stream.of(rule.from(), rule.until())))
                .filter(d -> d.isAfter(FIRST) && d.isBefore(CodeSummary.NEVER))
                .collect(Collectors.toSet());
        return Extent.sample(List.copyOf(days), LocalDate::toString, DAYS);
    }

    /** The advice of another day; none before any list of the code. */
    private static Optional<Advice> advice(Advisor advisor, Task task, LocalDate day) {
        try {
            return Optional.of(advisor.advise(task.onDay(day)));
        } catch (InputException e) {
            return Optional.empty();
        }
    }
}
