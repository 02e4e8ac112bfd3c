package org.fumewarden.training;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.report.html.Words;

/** Rounds on the shipped rules, with one advisor for each code. */
public final class Room {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final Path BENCH = Path.of("scenarios/shared/SHARED-SELECTION-010-plain-bench.yaml");

    private static final Map<Order, Round> ROUNDS = new ConcurrentHashMap<>();

    private Room() {}

    static Told told(Path file, Map<String, String> changes) {
        return Told.of(new Bench(file, changes, Optional.empty(), Optional.empty(), Advisor::shipped), Words.in("en"));
    }

    /** The question of a kind about a task. */
    static RoundItem item(String kind, Told told) {
        Random random = new Random(1);
        return switch (kind) {
            case "factor" -> FactorQuestion.about(told, random).orElseThrow();
            case "class" -> ClassQuestion.about(told, random).orElseThrow();
            case "duty" -> DutyQuestion.about(told, random).orElseThrow();
            default -> throw new IllegalArgumentException(kind);
        };
    }

    static RoundItem filter(Told told, String device) {
        return FilterQuestion.about(told, told.respirator(device).orElseThrow(), new Random(1))
                .orElseThrow();
    }

    /** A round to order, by what makes it. */
    record Order(String code, String language, Topic topic, int level, long seed) {
        Round round() {
            return ROUNDS.computeIfAbsent(this, o -> maker(o.language).made(o.code, DAY, o.topic, o.level, o.seed));
        }
    }

    /** Orders of every topic, spread over codes, languages and difficulties; more of them in the larger runs. */
    static List<Order> orders() {
        List<Order> taken = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            List<Order> all = new ArrayList<>();
            for (String code : List.of("gb", "us", "de")) {
                for (String language : Words.LANGUAGES) {
                    for (int level = RoundMaker.EASIEST; level <= RoundMaker.HARDEST; level++) {
                        for (long seed = 1; seed <= 3; seed++) {
                            all.add(new Order(code, language, topic, level, seed));
                        }
                    }
                }
            }
            taken.addAll(Extent.sample(all, Order::toString, Extent.of(1, 6, 54)));
        }
        return taken;
    }

    static RoundMaker maker(String language) {
        return new RoundMaker(Advisor::shipped, Words.in(language));
    }
}
