package org.fumewarden.training;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Words;
import org.fumewarden.task.TaskTree;

/** Makes rounds: of a task from a file, or to order by code, topic, difficulty and seed. The engine decides every answer. */
public final class RoundMaker {
    /** Easiest and hardest. */
    public static final int EASIEST = 1;

    public static final int HARDEST = 3;

    private final Function<String, Advisor> advisors;
    private final Words words;

    public RoundMaker(Function<String, Advisor> advisors, Words words) {
        this.advisors = advisors;
        this.words = words;
    }

    /**
     * The round of a task.
     *
     * @param story told with it
     * @param seed decides order and choice of the questions; the same seed makes the same round
     */
    public Round of(Bench bench, String story, long seed) {
        Told told = Told.of(bench, words);
        return round(told, told.said().title(), story, Optional.empty(), new Random(seed));
    }

    /**
     * The round of a task file. A counter-example of the rule base is told as the story that it turns round, and asks for the change.
     *
     * @param bench makes the bench of a file
     */
    public Round of(Path file, Function<Path, Bench> bench, long seed) {
        Optional<CounterExample.Pair> pair = CounterExample.Pair.of(file);
        if (pair.isPresent()) {
            Random random = new Random(seed);
            Told told = Told.of(bench.apply(pair.get().base()), words);
            Optional<RoundItem> turn = CounterExample.about(told, pair.get(), random);
            if (turn.isPresent()) {
                Round round = round(told, told.said().title(), "", Optional.empty(), random);
                List<RoundItem> items = new ArrayList<>(round.items());
                items.set(items.size() - 1, turn.get().citing(m -> m.citing(told.clauses()::of)));
                return new Round(round.title(), "", round.facts(), round.code(), "", items);
            }
        }
        return of(
                bench.apply(file), TaskTree.top(TaskTree.read(file), "because").orElse(""), seed);
    }

    /**
     * A round to order.
     *
     * @param level from {@link #EASIEST} to {@link #HARDEST}
     */
    public Round made(String code, LocalDate on, Topic topic, int level, long seed) {
        Random random = new Random(seed * 31 + topic.ordinal() * 7L + level);
        List<Draft> drafts = new ArrayList<>(drafts(topic, level));
        Collections.shuffle(drafts, random);
        Round best = null;
        for (Draft draft : drafts) {
            try {
                Round round = draft.round(code, on, topic, random);
                long own = round.items().stream()
                        .filter(i -> !i.kind().equals("practice"))
                        .count();
                if (own
                        >= topic.kinds().stream()
                                .filter(k -> !k.equals("practice"))
                                .count()) {
                    return round;
                }
                best = best == null ? round : best;
            } catch (InputException e) {
                // This code cannot decide such a task: another is taken.
            }
        }
        if (best == null) {
            throw new InputException(new Problem(
                    "training room",
                    0,
                    topic.key(),
                    "has no task under " + code + ".",
                    "choose another topic or code."));
        }
        return best;
    }

    private List<Draft> drafts(Topic topic, int level) {
        List<Draft> drafts = new ArrayList<>();
        for (WordTable.Row task : WordTable.rows("tasks")) {
            for (WordTable.Row twist :
                    task.words("topics").contains(topic.key()) ? task.list("twists") : List.<WordTable.Row>of()) {
                boolean fits =
                        twist.optional("topic").map(t -> t.equals(topic.key())).orElse(true);
                if (fits && twist.text("level").equals(String.valueOf(level))) {
                    drafts.add(new Draft(task, twist));
                }
            }
        }
        return drafts;
    }

    /** A task of the table with one of its twists. */
    private final class Draft {
        private final WordTable.Row task;
        private final WordTable.Row twist;

        Draft(WordTable.Row task, WordTable.Row twist) {
            this.task = task;
            this.twist = twist;
        }

        Round round(String code, LocalDate on, Topic topic, Random random) {
            String title = task.row("title").says(words.language());
            Map<String, String> changes = new HashMap<>();
            task.row("vary").values().keySet().stream()
                    .map(String::valueOf)
                    .sorted()
                    .forEach(path -> {
                        List<String> values = task.row("vary").words(path);
                        changes.put(path, values.get(random.nextInt(values.size())));
                    });
            task.row("under")
                    .row(code)
                    .values()
                    .forEach((path, value) -> changes.put(String.valueOf(path), String.valueOf(value)));
            twist.row("set")
                    .values()
                    .forEach((path, value) -> changes.put(String.valueOf(path), String.valueOf(value)));
            String text = "title: \"" + title + "\"\ncode: " + code + "\non: " + on + "\n"
                    + String.join("\n", task.words("file")) + "\n";
            Bench bench = Bench.ofText(task.text("id"), text, advisors).with(changes);
            String story = task.row("story").says(words.language()) + " " + twist.says(words.language());
            return RoundMaker.this.round(Told.of(bench, words), title, story, Optional.of(topic), random);
        }
    }

    private Round round(Told told, String title, String story, Optional<Topic> topic, Random random) {
        List<RoundItem> items = new ArrayList<>();
        Set<String> asked = new HashSet<>();
        if (told.said().status() == Status.INCOMPLETE) {
            MissingQuestion.about(told, random).ifPresent(items::add);
        }
        for (String kind : topic.map(Topic::kinds).orElse(Topic.ANY)) {
            ask(kind, told, topic, asked, random)
                    .filter(i -> items.size() < Round.QUESTIONS)
                    .ifPresent(items::add);
        }
        while (items.size() < Round.QUESTIONS) {
            items.add(Practice.about(told, topic.map(Topic::key).orElse(""), asked, random));
        }
        return new Round(
                        title,
                        story,
                        Facts.of(told),
                        told.said().codeUsed().name(),
                        topic.map(Topic::key).orElse(""),
                        items)
                .citing(told.clauses());
    }

    private static Optional<RoundItem> ask(
            String kind, Told told, Optional<Topic> topic, Set<String> asked, Random random) {
        return switch (kind) {
            case "factor" -> FactorQuestion.about(told, random);
            case "class" -> ClassQuestion.about(told, random);
            case "filter" ->
                told.suitable().stream()
                        .filter(r -> told.device(r.deviceClass()).filters())
                        .findFirst()
                        .or(told::best)
                        .flatMap(r -> FilterQuestion.about(told, r, random));
            case "duty" -> DutyQuestion.about(told, random);
            case "change" -> ChangeQuestion.about(told, random);
            case "interval" -> IntervalQuestion.about(told, asked, random);
            default -> Optional.of(Practice.about(told, topic.map(Topic::key).orElse(""), asked, random));
        };
    }
}
