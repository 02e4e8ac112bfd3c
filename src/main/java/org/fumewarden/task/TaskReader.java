package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.MeasuredBreakthrough;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Input;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Unknown;

/** Turns the tree of a task file into facts, with every fault named. */
public final class TaskReader {
    private static final Set<String> TOP =
            Set.of("title", "code", "on", "exposures", "expect", "because", "variants", RegisterReader.NAME);
    private static final Set<String> FLAGS = Set.of("true", "false");
    private static final String UNKNOWN = "unknown";

    /** In degrees Celsius, by the definition of the kelvin. */
    /** The time over which a shift average is taken, in minutes. */
    private static final BigDecimal FULL_SHIFT = BigDecimal.valueOf(8 * 60);

    private static final int LONGEST_TITLE = 300;

    private static final BigDecimal DAY = new BigDecimal("1440");
    private static final BigDecimal WEEK = new BigDecimal("10080");

    /**
     * Groups that are asked about only when the file mentions them: a class may be chosen before there is a unit, and an
     * estimate is needed only where nothing was measured.
     */
    private static final Set<String> OPTIONAL = Set.of("kit", "unit", "estimate");

    private final Vocabulary vocabulary;

    /** The names that a task may hold: those at its top, and those below each of its groups. */
    private final Set<String> known = new TreeSet<>(TOP);

    private final Map<String, Set<String>> groups = new HashMap<>();

    /** Names of older files, by what they are called now. */
    private final Map<String, String> old;

    public TaskReader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.old = vocabulary.catalogues().getOrDefault("old-names", Map.of());
        for (Question question : vocabulary.questions()) {
            int dot = question.path().indexOf('.');
            groups.computeIfAbsent(question.path().substring(0, dot), k -> new TreeSet<>())
                    .add(question.path().substring(dot + 1));
        }
        if (groups.containsKey("kit")) {
            groups.get("kit").addAll(Set.of(CurveReader.NAME, BreakthroughReader.NAME));
        }
        known.addAll(groups.keySet());
    }

    /**
     * Reads the task.
     *
     * @param code the code that decides, whatever the file says
     * @param on the day that decides, when given
     * @throws org.fumewarden.codes.InputException with every fault found
     */
    public Task read(Located root, String code, Optional<LocalDate> on) {
        Map<String, Located> places = places(root);
        List<Input> inputs = new ArrayList<>();
        for (Question question : vocabulary.questions()) {
            Located place = places.get(question.path());
            if (place != null) {
                answer(question, place).ifPresent(inputs::add);
            } else if (!OPTIONAL.contains(question.group())) {
                inputs.add(new Unknown(question.id(), question.path()));
            }
        }
        withinTheShift(inputs, places);
        Map<String, Located> top = vocabulary.told(root.entries());
        String title = Optional.ofNullable(root.entries().get("title"))
                .map(TaskReader::title)
                .orElse("Task without a title");
        LocalDate day = TaskDay.read(root, on);
        inputs.stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(a -> a.question().equals(GasTestTime.QUESTION))
                .forEach(a -> GasTestTime.check(places.get(a.path()), day));
        Impossible.opened(places.get("kit.filter-opened"), day);
        ExposureReader exposures = new ExposureReader(
                vocabulary,
                day,
                minutes(inputs, "shift")
                        .map(m -> m.value().divide(FULL_SHIFT, MathContext.DECIMAL64))
                        .orElse(BigDecimal.ONE)
                        .max(BigDecimal.ONE));
        Optional.ofNullable(top.get("exposures")).ifPresent(exposures::read);
        inputs.addAll(exposures.inputs());
        List<EnduranceCurve> curves = Optional.ofNullable(places.get(CurveReader.PATH))
                .map(CurveReader::read)
                .orElse(List.of());
        Map<String, MeasuredBreakthrough> breakthroughs = Optional.ofNullable(places.get(BreakthroughReader.PATH))
                .map(list -> BreakthroughReader.read(list, vocabulary.agents()))
                .orElse(Map.of());
        List<RegisterNote> register = Optional.ofNullable(top.get(RegisterReader.NAME))
                .map(RegisterReader::read)
                .orElse(List.of());
        root.settle();
        return new Task(
                title,
                code,
                day,
                inputs,
                exposures.readings(),
                root.file(),
                lines(top, places),
                curves,
                breakthroughs,
                register);
    }

    private static String title(Located place) {
        String title = place.text();
        if (title.length() > LONGEST_TITLE) {
            place.complain(
                    "has " + title.length() + " characters; at most " + LONGEST_TITLE + " are a title.",
                    "name the task in one line, and tell the rest under because:.");
        }
        return title;
    }

    private static Map<String, Integer> lines(Map<String, Located> top, Map<String, Located> places) {
        Map<String, Integer> lines = new HashMap<>();
        places.forEach((path, place) -> lines.put(path, place.line()));
        Optional.ofNullable(top.get("on")).ifPresent(cell -> lines.put("on", cell.line()));
        if (top.containsKey("exposures")) {
            top.get("exposures")
                    .items()
                    .forEach(item -> item.entries().values().forEach(cell -> lines.put(cell.path(), cell.line())));
        }
        return lines;
    }

    /** The places of the file that answer questions, by path; complains about every name that nothing asks for. */
    private Map<String, Located> places(Located root) {
        Map<String, Located> places = new LinkedHashMap<>();
        vocabulary.told(named(root, known, known)).forEach((name, entry) -> {
            if (groups.containsKey(name) && !entry.isNull()) {
                Set<String> readable = new TreeSet<>(groups.get(name));
                readable.addAll(old.keySet());
                vocabulary.told(named(entry, groups.get(name), readable)).forEach((below, place) -> {
                    places.put(name + "." + below, place);
                    places.putIfAbsent(name + "." + old.getOrDefault(below, below), place);
                });
            }
        });
        return places;
    }

    /** The entries of a map; a name that is not expected is complained about, and what is the doctor's is not guessed at. */
    private static Map<String, Located> named(Located map, Set<String> expected, Set<String> readable) {
        Map<String, Located> entries = map.entries();
        entries.forEach((name, entry) -> {
            if (!readable.contains(name)) {
                entry.unexpected(
                        name,
                        Health.isMeant(name) && !entry.path().startsWith("kit.")
                                ? Health.MAYBE
                                : Nearest.remedy(name, expected));
            }
        });
        return entries;
    }

    private Optional<Input> answer(Question question, Located place) {
        return switch (question.kind()) {
            case "choice" ->
                choice(question, place, vocabulary.choices(question).keySet());
            case "flag" -> choice(question, place, FLAGS);
            case "day" -> place.day().map(day -> word(question, day.toString()));
            case "text" ->
                Optional.of(place.text())
                        .filter(text -> !text.isEmpty())
                        .map(text -> word(question, Located.shown(text)));
            default -> Quantities.amount(place, question.kind()).flatMap(amount -> measure(question, place, amount));
        };
    }

    private Optional<Input> measure(Question question, Located place, BigDecimal amount) {
        Optional<Impossible.Found> found = Impossible.amount(question, amount);
        if (found.isPresent()) {
            return impossible(found.get().fault(), place, found.get().message());
        }
        if (question.kind().equals("duration") && question.group().equals("task")) {
            boolean week = question.id().equals("week");
            if (amount.signum() == 0) {
                return impossible(Fault.TIME, place, "is no time");
            }
            if (amount.compareTo(week ? WEEK : DAY) > 0) {
                return impossible(Fault.TIME, place, week ? "is longer than a week" : "is longer than a day");
            }
        }
        return Optional.of(new Measure(question.id(), amount, Quantities.canonical(question.kind()), question.path()));
    }

    /** Nobody works or wears longer in a shift than the shift lasts. */
    private static void withinTheShift(List<Input> inputs, Map<String, Located> places) {
        minutes(inputs, "shift")
                .ifPresent(shift -> List.of("time-on-task", "wear-time").forEach(question -> minutes(inputs, question)
                        .filter(m -> m.value().compareTo(shift.value()) > 0)
                        .ifPresent(m -> places.get(m.path())
                                .complain(
                                        Fault.SHIFT,
                                        "is longer than the shift: \""
                                                + Located.shown(
                                                        places.get(m.path()).text()) + "\" in a shift of \""
                                                + Located.shown(
                                                        places.get(shift.path()).text()) + "\".",
                                        "correct " + m.path() + " or " + shift.path() + "; at most they are equal."))));
    }

    private static Optional<Measure> minutes(List<Input> inputs, String question) {
        return inputs.stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(m -> m.question().equals(question))
                .findFirst();
    }

    private static Optional<Input> impossible(Fault fault, Located place, String message) {
        place.complain(
                fault,
                message + ": \"" + Located.shown(place.text()) + "\".",
                "check the number and its unit, or write \"unknown\".");
        return Optional.empty();
    }

    /** The answer that a word names; a word of several meanings is asked about, never guessed. */
    private Optional<Input> choice(Question question, Located place, Set<String> allowed) {
        String text = old.getOrDefault(place.text(), place.text());
        if (allowed.contains(text)) {
            return Optional.of(word(question, text));
        }
        List<String> meant = vocabulary.meant(question, text);
        if (meant.size() == 1) {
            return Optional.of(word(question, meant.get(0)));
        }
        place.complain(
                meant.isEmpty() ? Fault.CHOICE : Fault.MEANINGS,
                (meant.isEmpty() ? "cannot be \"" : "has more than one meaning: \"") + Located.shown(text) + "\".",
                meant.isEmpty() ? Nearest.remedy(text, withUnknown(allowed)) : Nearest.oneOf(meant),
                meant.isEmpty() ? Nearest.to(text, allowed) : meant);
        return Optional.empty();
    }

    private static Input word(Question question, String word) {
        return new Answer(question.id(), word, question.path());
    }

    private static Set<String> withUnknown(Set<String> words) {
        Set<String> all = new TreeSet<>(words);
        all.add(UNKNOWN);
        return all;
    }
}
