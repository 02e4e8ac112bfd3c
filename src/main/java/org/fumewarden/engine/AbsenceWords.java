package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.trail.Premise;

/** Words and addresses for what a rule found missing. */
final class AbsenceWords {
    private static final Pattern COMPARED =
            Pattern.compile("(\\w+)\\s*(==|!=|<=|>=|<|>|not in\\b|in\\b|memberOf\\b|contains\\b)\\s*(.+)");
    private static final Pattern VALUE = Pattern.compile("\"([^\"]*)\"|Averaging\\.(\\w+)|(-?[0-9][0-9.]*)");
    private static final String SAME = "==";

    private final Vocabulary vocabulary;

    AbsenceWords(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The premise that something was not there; its words leave out what the conclusion is about anyway. */
    Premise premise(Absence absence, String subject) {
        return new Premise(
                "absent",
                absence.missing().stream().map(this::address).collect(Collectors.joining("+")),
                words(absence, subject),
                Optional.empty());
    }

    private String address(Absence.Missing missing) {
        Optional<Question> question = question(missing);
        return question.isPresent()
                ? question.get().path()
                : kebab(missing.kind())
                        + missing.conditions().stream().map(c -> "/" + raw(c)).collect(Collectors.joining());
    }

    private String words(Absence absence, String subject) {
        Absence.Missing first = absence.missing().get(0);
        String asked = asked(first, "question");
        String set = asked(first, "set");
        if (absence.missing().size() > 1 || asked.isEmpty() && set.isEmpty()) {
            return "no "
                    + absence.missing().stream().map(m -> missing(m, subject)).collect(Collectors.joining(" with "));
        }
        String values = first.conditions().stream()
                .filter(c -> !asks(c, "question") && !asks(c, "set"))
                .map(this::condition)
                .collect(Collectors.joining(", "));
        if (!set.isEmpty()) {
            return values.isEmpty() ? "there is no list: " + set : values + " is not among: " + set;
        }
        return asked + ": " + (values.isEmpty() ? "no answer" : "not " + values);
    }

    private String missing(Absence.Missing missing, String subject) {
        String conditions = missing.conditions().stream()
                .filter(c -> !raw(c).equals(subject))
                .map(this::condition)
                .filter(c -> !c.isEmpty())
                .collect(Collectors.joining(", "));
        return kind(missing.kind()) + (conditions.isEmpty() ? "" : ": " + conditions);
    }

    private String kind(String type) {
        String id = "kind-" + kebab(type);
        return vocabulary.names().getOrDefault(id, kebab(type).replace('-', ' '));
    }

    private Optional<Question> question(Absence.Missing missing) {
        return missing.conditions().stream()
                .filter(c -> asks(c, "question"))
                .flatMap(c -> vocabulary.question(raw(c)).stream())
                .findFirst();
    }

    private String asked(Absence.Missing missing, String part) {
        return missing.conditions().stream()
                .filter(c -> asks(c, part))
                .map(this::condition)
                .findFirst()
                .orElse("");
    }

    private static boolean asks(String condition, String part) {
        Matcher compared = COMPARED.matcher(condition);
        return compared.matches()
                && compared.group(1).equals(part)
                && compared.group(2).equals(SAME);
    }

    /** One condition in words: a value alone where it has to be the same. */
    private String condition(String condition) {
        Matcher compared = COMPARED.matcher(condition);
        if (!compared.matches()) {
            String part = condition.replaceAll("\\(.*", "").replace("!", "not ");
            String values = values(condition);
            return (spaced(part) + " " + values).strip();
        }
        String values = values(compared.group(3));
        return switch (compared.group(2)) {
            case "!=", "not in" -> "other than " + values;
            case "<" -> "below " + values;
            case "<=" -> "at most " + values;
            case ">" -> "above " + values;
            case ">=" -> "at least " + values;
            default -> values;
        };
    }

    private String values(String text) {
        List<String> words = new ArrayList<>();
        Matcher value = VALUE.matcher(text);
        while (value.find()) {
            words.add(
                    value.group(1) != null
                            ? value.group(1).indexOf(' ') < 0 ? vocabulary.name(value.group(1)) : value.group(1)
                            : value.group(2) != null
                                    ? Averaging.valueOf(value.group(2)).words()
                                    : value.group(3));
        }
        return String.join(" or ", words);
    }

    /** The values of a condition as they are, for an address. */
    private static String raw(String condition) {
        List<String> values = new ArrayList<>();
        Matcher value = VALUE.matcher(condition);
        while (value.find()) {
            values.add(
                    value.group(1) != null
                            ? value.group(1)
                            : value.group(2) != null ? value.group(2).toLowerCase(Locale.ROOT) : value.group(3));
        }
        return values.isEmpty() ? condition : String.join("|", values);
    }

    /** {@code AssignedFactor} as {@code assigned-factor}. */
    static String kebab(String type) {
        return type.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    private static String spaced(String part) {
        return kebab(part.strip()).replace('-', ' ');
    }
}
