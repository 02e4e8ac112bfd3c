package org.fumewarden.training;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.html.Words;

/** Rounds on the shipped rules, with one advisor for each code. */
public final class Room {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final Path BENCH = Path.of("scenarios/shared/SHARED-SELECTION-010-plain-bench.yaml");

    private static final Map<String, Advisor> ADVISORS = new ConcurrentHashMap<>();

    private Room() {}

    public static Advisor advisor(String code) {
        return ADVISORS.computeIfAbsent(code, c -> new Advisor(RuleBase.shipped(c)));
    }

    static Told told(Path file, Map<String, String> changes) {
        return Told.of(new Bench(file, changes, Optional.empty(), Optional.empty(), Room::advisor), Words.in("en"));
    }

    /** The question of a kind about a task. */
    static Item item(String kind, Told told) {
        Random random = new Random(1);
        return switch (kind) {
            case "factor" -> FactorQuestion.about(told, random).orElseThrow();
            case "class" -> ClassQuestion.about(told, random).orElseThrow();
            case "duty" -> DutyQuestion.about(told, random).orElseThrow();
            default -> throw new IllegalArgumentException(kind);
        };
    }

    static Item filter(Told told, String device) {
        return FilterQuestion.about(told, told.respirator(device).orElseThrow(), new Random(1))
                .orElseThrow();
    }

    static RoundMaker maker(String language) {
        return new RoundMaker(Room::advisor, Words.in(language));
    }
}
