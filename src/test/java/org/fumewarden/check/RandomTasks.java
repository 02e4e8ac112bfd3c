package org.fumewarden.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.check.oracle.Oracle;
import org.fumewarden.check.oracle.Tables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Question;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Unit;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;

/** Random tasks over the vocabulary of a code. The same seed gives the same task. */
final class RandomTasks {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    /** Answers that leave the way to a respirator open; without them nearly every random task would be refused. */
    private static final Map<String, String> CALM = answers("""
            explosive=false immediately-dangerous=false place=indoors purpose=work facial-hair=false spectacles=false
            fit-tested=true medically-cleared=true coating=none base-metal=mild-steel filler=plain
            ventilation=mechanical-adequate trained=true vessel=none vessel-cleaned=true raised-pressure=false
            degreaser-in-sight=false fit-test-method=quantitative beryllium-objective-data=true unit-withdrawn=false
            """);

    private static final Map<String, String> TYPICAL = Map.of(
            "percent", "20.9",
            "duration", "45",
            "length", "100",
            "volume", "300",
            "flow", "170",
            "temperature", "20",
            "pressure", "101325",
            "count", "2");

    /** Where a clause draws a line: the value itself, and one on either side. */
    private static final Map<String, List<String>> EDGES = Map.of(
            "oxygen", List.of("15.9", "16.0", "17.8", "19.4", "19.5", "19.8", "19.9", "20.9", "22.0", "22.1", "23.6"),
            "altitude", List.of("0", "914.4", "914.5", "1828.8", "2438.4", "2438.5"),
            "wear-time", List.of("60", "61", "75", "120", "135", "150", "151", "240"),
            "time-on-task", List.of("30", "31", "60", "240", "241", "480"),
            "gas-test", List.of("0.9", "1", "10"),
            "beryllium-share", List.of("0", "0.09", "0.1"));

    private final CodeBook book;
    private final List<Limit> limits;
    private final List<DangerLevel> dangers;
    private final List<String> agents;
    private final Tables tables;

    private static Map<String, String> answers(String told) {
        return Arrays.stream(told.split("\\s+")).collect(Collectors.toMap(w -> w.split("=")[0], w -> w.split("=")[1]));
    }

    RandomTasks(CodeBook book) {
        this.book = book;
        this.tables = Tables.of(book, DAY);
        this.dangers = tables.all(DangerLevel.class);
        // A level without a limit is stated too: the code holds it against a benchmark.
        Map<String, Limit> each = new LinkedHashMap<>();
        Stream.concat(
                        tables.all(Limit.class).stream().map(Limit::agent),
                        tables.all(Benchmark.class).stream().map(Benchmark::agent))
                .distinct()
                .flatMap(agent -> tables.yardsticks(book.card().id(), agent).stream())
                .forEach(l -> each.putIfAbsent(l.question(), l));
        this.limits = List.copyOf(each.values());
        this.agents = List.copyOf(
                new LinkedHashSet<>(limits.stream().map(Limit::agent).toList()));
    }

    Task task(long seed) {
        // Neighbouring seeds begin alike; an odd factor scatters them.
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        boolean calm = random.nextInt(4) > 0;
        List<Input> inputs = new ArrayList<>();
        for (Question question : book.vocabulary().questions()) {
            inputs.add(ofAContainer(question, inputs).orElseGet(() -> answer(question, random, calm)));
        }
        Set<String> chosen = new LinkedHashSet<>();
        if (calm) {
            // A part of the fume may stay unsaid, so that the whole has to bound it.
            emitted(inputs).stream()
                    .filter(a -> !tables.in("part-of-welding-fume", a) || random.nextInt(5) > 0)
                    .forEach(chosen::add);
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            chosen.add(agents.get(random.nextInt(agents.size())));
        }
        chosen.forEach(agent -> exposures(agent, random, calm, inputs));
        return task(inputs);
    }

    Oracle oracle(Task task) {
        return new Oracle(tables, task);
    }

    Task task(List<Input> inputs) {
        return new Task("random", book.card().id(), DAY, inputs);
    }

    /** The agents that the answers put into the air, so that a calm task has a level for each. */
    private List<String> emitted(List<Input> inputs) {
        return oracle(task(inputs)).principalAgents().stream()
                .filter(agents::contains)
                .toList();
    }

    /** A gas test is said of a container only, and then mostly with instrument and time. */
    private static Optional<Input> ofAContainer(Question question, List<Input> before) {
        boolean container = before.stream()
                .anyMatch(i -> i instanceof Answer a
                        && a.question().equals("vessel")
                        && !a.value().equals("none"));
        if (!question.id().startsWith("gas-test")) {
            return Optional.empty();
        }
        if (!container) {
            return Optional.of(new Unknown(question.id(), question.path()));
        }
        return question.kind().equals("text")
                ? Optional.of(new Answer(question.id(), "as noted", question.path()))
                : Optional.empty();
    }

    private Input answer(Question question, Random random, boolean calm) {
        if (random.nextInt(calm ? 60 : 6) == 0) {
            return new Unknown(question.id(), question.path());
        }
        if (question.kind().equals("choice") || question.kind().equals("flag")) {
            List<String> words = question.kind().equals("flag")
                    ? List.of("true", "false")
                    : List.copyOf(book.vocabulary().choices(question).keySet());
            String calmly = CALM.get(question.id());
            String word = calm && calmly != null && words.contains(calmly) && random.nextInt(15) > 0
                    ? calmly
                    : words.get(random.nextInt(words.size()));
            return new Answer(question.id(), word, question.path());
        }
        if (Set.of("text", "pressure").contains(question.kind())) {
            return new Unknown(question.id(), question.path());
        }
        List<String> edges = EDGES.get(question.id());
        if (edges != null && random.nextInt(calm ? 8 : 2) == 0) {
            BigDecimal edge = new BigDecimal(edges.get(random.nextInt(edges.size())));
            return new Measure(question.id(), edge, "canonical", question.path());
        }
        BigDecimal typical = Set.of("gas-test", "beryllium-share").contains(question.id())
                ? BigDecimal.ZERO
                : new BigDecimal(TYPICAL.getOrDefault(question.kind(), "1"));
        BigDecimal value = calm && random.nextInt(10) > 0
                ? typical
                : typical.multiply(BigDecimal.valueOf(random.nextInt(300), 2), MathContext.DECIMAL64);
        if (question.kind().equals("percent")) {
            value = value.min(BigDecimal.valueOf(100));
        }
        return new Measure(question.id(), value, "canonical", question.path());
    }

    private void exposures(String agent, Random random, boolean calm, List<Input> inputs) {
        if (random.nextInt(calm ? 6 : 12) == 0) {
            String path = "exposures." + agent + ".judged";
            String most = Judged.AT_MOST_THE_LIMIT;
            inputs.add(new Judged(agent, most, "a reason", "a person", "like-task", "2026-02-20", 10, path));
            return;
        }
        for (Limit listed : limits) {
            if (listed.agent().equals(agent)) {
                Limit limit = random.nextInt(6) == 0 ? listed.in(Unit.MG_M3) : listed;
                String path = "exposures." + agent + "." + limit.averaging().key();
                if (random.nextInt(calm ? 100 : 20) == 0) {
                    dangers.stream()
                            .filter(d -> d.agent().equals(agent))
                            .forEach(d -> inputs.add(danger(d, limit, random, path)));
                }
                if (inputs.get(inputs.size() - 1).path().equals(path)) {
                    continue;
                }
                if (random.nextInt(calm ? 80 : 8) == 0) {
                    inputs.add(new Unknown(path, path));
                } else {
                    inputs.add(exposure(limit, calm ? calmer(limit, random) : level(limit, random), path));
                }
            }
        }
    }

    /** Just below a danger level, at it or just above, in the unit of that list. */
    private static Exposure danger(DangerLevel danger, Limit limit, Random random, String path) {
        BigDecimal level = danger.value().multiply(BigDecimal.valueOf(99 + random.nextInt(3), 2));
        return new Exposure(danger.agent(), limit.averaging(), level, danger.unit(), "random", false, path);
    }

    private static Exposure exposure(Limit limit, BigDecimal level, String path) {
        String statistic = limit.averaging() == Averaging.STEL ? Exposure.AS_GIVEN : "random";
        return new Exposure(limit.agent(), limit.averaging(), level, limit.unit(), statistic, false, path);
    }

    /** Mostly below the limit, so that many a task has a class that serves. */
    private static BigDecimal calmer(Limit limit, Random random) {
        return random.nextInt(4) == 0
                ? level(limit, random)
                : limit.value().multiply(BigDecimal.valueOf(random.nextInt(120), 2));
    }

    /** Mostly near the limit, often exactly at a factor times the limit, sometimes far above. */
    private static BigDecimal level(Limit limit, Random random) {
        int[] factors = {0, 1, 4, 10, 20, 25, 40, 50, 1000, 2000};
        return switch (random.nextInt(4)) {
            case 0 -> limit.value().multiply(BigDecimal.valueOf(factors[random.nextInt(factors.length)]));
            case 1 -> limit.value().multiply(BigDecimal.valueOf(random.nextInt(3000), 2));
            default -> limit.value().multiply(BigDecimal.valueOf(random.nextInt(120), 2));
        };
    }

    /**
     * A task that is worse in one way: a level raised, an agent added, an answer lost.
     *
     * @param hazards agents that the advice already counts with
     */
    Task worse(Task task, Set<String> hazards, long seed) {
        Random random = new Random(seed);
        List<Input> inputs = new ArrayList<>(task.inputs());
        List<Exposure> levels = inputs.stream()
                .filter(Exposure.class::isInstance)
                .map(Exposure.class::cast)
                .toList();
        int kind = random.nextInt(levels.isEmpty() ? 2 : 3);
        if (kind == 0) {
            forget(inputs, random.nextInt(inputs.size()));
        } else if (kind == 1) {
            add(hazards, random, inputs);
        } else {
            Exposure old = levels.get(random.nextInt(levels.size()));
            BigDecimal raised = old.level()
                    .multiply(BigDecimal.valueOf(101 + random.nextInt(1000), 2))
                    .add(new BigDecimal("0.001"));
            inputs.set(
                    inputs.indexOf(old),
                    new Exposure(
                            old.agent(),
                            old.averaging(),
                            raised,
                            old.unit(),
                            old.statistic(),
                            old.estimated(),
                            old.path()));
        }
        return task(inputs);
    }

    private static void forget(List<Input> inputs, int at) {
        Input lost = inputs.get(at);
        String question = lost instanceof Answer answer
                ? answer.question()
                : lost instanceof Measure measure ? measure.question() : lost.path();
        if (lost instanceof Judged judged) {
            question = "exposures." + judged.agent() + "." + Averaging.TWA.key();
        }
        inputs.set(at, new Unknown(question, lost instanceof Judged ? question : lost.path()));
    }

    /** Adds an agent that is no hazard yet; a level for one that is would be news and not harm. */
    private void add(Set<String> there, Random random, List<Input> inputs) {
        Map<String, Limit> free = new LinkedHashMap<>();
        limits.stream().filter(l -> !there.contains(l.agent())).forEach(l -> free.putIfAbsent(l.agent(), l));
        List<String> names = List.copyOf(free.keySet());
        String agent = names.get(random.nextInt(names.size()));
        limits.stream()
                .filter(l -> l.agent().equals(agent))
                .forEach(l -> inputs.add(exposure(
                        l,
                        level(l, random),
                        "exposures." + agent + "." + l.averaging().key())));
    }
}
