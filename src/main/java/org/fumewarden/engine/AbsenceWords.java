package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.EnumUtils;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Sentence;
import org.fumewarden.trail.Step;

/** Words and addresses for what a rule found missing. */
final class AbsenceWords {
    private static final Pattern COMPARED =
            Pattern.compile("(\\w+)\\s*(==|!=|<=|>=|<|>|not in\\b|in\\b|memberOf\\b|contains\\b)\\s*(.+)");
    private static final Pattern VALUE = Pattern.compile("\"([^\"]*)\"|Averaging\\.(\\w+)|(-?[0-9][0-9.]*)");
    private static final Pattern BOUND = Pattern.compile("\\$(\\w+)(\\.\\w+\\(\\))?");
    private static final String SAME = "==";
    /** How the address of a level begins, in a condition. */
    private static final String LEVEL = "\"exposures.";
    /** Parts that name a fact: their value alone says enough. */
    private static final Set<String> NAMING = Set.of(
            "id",
            "agent",
            "question",
            "set",
            "item",
            "kind",
            "topic",
            "deviceClass",
            "subject",
            "verdict",
            "process",
            "trait");

    private static final Set<String> ANSWERS = Set.of("Answer", "Unknown", "Measure");

    private final Vocabulary vocabulary;
    /** What is said in English, in the language that is asked for. */
    private final UnaryOperator<String> own;

    private final UnaryOperator<String> name;

    AbsenceWords(Vocabulary vocabulary, UnaryOperator<String> own, UnaryOperator<String> name) {
        this.vocabulary = vocabulary;
        this.own = own;
        this.name = name;
    }

    private String own(String english, String... places) {
        String said = own.apply(english);
        for (int i = 0; i < places.length; i++) {
            said = said.replace("{" + i + "}", places[i]);
        }
        return said;
    }

    /** The premise that something was not there; its words leave out what the conclusion is about anyway. */
    Premise premise(Absence absence, String subject) {
        return new Premise(
                "absent",
                absence.missing().stream().map(this::address).collect(Collectors.joining("+")),
                Sentence.plain(words(absence, subject)),
                Optional.empty());
    }

    private String address(Absence.Missing missing) {
        Optional<Question> asked = known(missing);
        return asked.isPresent()
                ? asked.get().path()
                : kebab(missing.kind())
                        + missing.conditions().stream().map(c -> "/" + raw(c)).collect(Collectors.joining());
    }

    private String words(Absence absence, String subject) {
        Absence.Missing first = absence.missing().get(0);
        String asked = question(first);
        String set = set(first);
        if (absence.missing().size() > 1 || asked.isEmpty() && set.isEmpty()) {
            return own(
                    "no {0}",
                    absence.missing().stream()
                            .map(m -> missing(m, subject))
                            .collect(Collectors.joining(" " + own("with") + " ")));
        }
        String values = first.conditions().stream()
                .filter(c -> !asks(c, "question") && !asks(c, "set") && !ofSubject(c, subject))
                .map(this::condition)
                .filter(c -> !c.isEmpty())
                .collect(Collectors.joining(", "));
        if (!set.isEmpty()) {
            return values.isEmpty() ? own("not among: {0}", set) : own("{0} is not among: {1}", values, set);
        }
        return asked + ": " + (values.isEmpty() ? own("no answer") : own("not {0}", values));
    }

    private String missing(Absence.Missing missing, String subject) {
        String conditions = missing.conditions().stream()
                .filter(c -> !ofSubject(c, subject))
                .map(c -> condition(c.replace(LEVEL + subject + '.', LEVEL)))
                .filter(c -> !c.isEmpty())
                .collect(Collectors.joining(", "));
        return kind(missing.kind()) + (conditions.isEmpty() ? "" : ": " + conditions);
    }

    /** Facts that a rule looks for together, whatever match it is in. */
    String together(Absence absence) {
        return absence.missing().stream().map(this::present).collect(Collectors.joining(", and "));
    }

    /** A fact that a rule looks for, whatever match it is in. */
    String present(Absence.Missing pattern) {
        Absence.Missing any = new Absence.Missing(
                pattern.kind(),
                pattern.conditions().stream()
                        .map(c -> BOUND.matcher(c).replaceAll(m -> "\"that " + spaced(m.group(1)) + "\""))
                        .toList());
        String asked = question(any);
        String set = set(any);
        String values = any.conditions().stream()
                .filter(c -> asked.isEmpty() || !asks(c, "question"))
                .filter(c -> set.isEmpty() || !asks(c, "set"))
                .map(c -> asked.isEmpty() && set.isEmpty() ? partly(c) : condition(c))
                .filter(c -> !c.isEmpty())
                .collect(Collectors.joining(", "));
        if (any.kind().equals("Unknown")) {
            return asked.isEmpty() ? "a question is open" : "open: " + asked;
        }
        if (!asked.isEmpty()) {
            return asked + (values.isEmpty() ? " is told" : ": " + yesOrNo(values));
        }
        if (!set.isEmpty()) {
            return (values.isEmpty() ? "something" : values) + " is among: " + set;
        }
        String kind = kind(any.kind());
        String article = "aeiou".indexOf(kind.charAt(0)) < 0 ? "a " : "an ";
        String own = parts(values, false, ", ");
        String whose = parts(values, true, " and ");
        return article
                + kind
                + (own.isEmpty() ? "" : ": " + own)
                + (whose.isEmpty() ? "" : (own.isEmpty() ? "" : ",") + " whose " + whose);
    }

    private static String yesOrNo(String values) {
        return values.equals("true") ? "yes" : values.equals("false") ? "no" : values;
    }

    /** The values that name what the fact is about, or those that say what a part of it is. */
    private static String parts(String values, boolean told, String between) {
        return Arrays.stream(values.split(", "))
                .filter(v -> v.contains(" is ") == told)
                .collect(Collectors.joining(between));
    }

    /** One condition with the part of the fact that it is about, unless the part is what the fact is called by. */
    private String partly(String condition) {
        Matcher compared = COMPARED.matcher(condition);
        String said = condition(condition);
        return !compared.matches() || said.isEmpty() || NAMING.contains(compared.group(1))
                ? said
                : spaced(compared.group(1)) + (compared.group(2).equals(SAME) ? " is " : " ") + said;
    }

    private String kind(String type) {
        String id = "kind-" + kebab(type);
        return own(vocabulary.names().getOrDefault(id, kebab(type).replace('-', ' ')));
    }

    private Optional<Question> known(Absence.Missing missing) {
        return missing.conditions().stream()
                .filter(c -> asks(c, "question"))
                .flatMap(c -> vocabulary.question(raw(c)).stream())
                .findFirst();
    }

    /** The question that a fact answers or leaves open, in words; empty for other facts. */
    private String question(Absence.Missing missing) {
        return ANSWERS.contains(missing.kind()) ? asked(missing, "question") : "";
    }

    /** The list that a fact is an entry of, in words; empty for other facts. */
    private String set(Absence.Missing missing) {
        return missing.kind().equals("Member") ? asked(missing, "set") : "";
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
        // What the match itself is of tells nothing of what is missing.
        if (condition.startsWith("Averaging.")) {
            return "";
        }
        Matcher compared = COMPARED.matcher(condition);
        if (!compared.matches()) {
            String part = condition.replaceAll("\\(.*", "").replace("!", "not ");
            return (own(spaced(part)) + " "
                            + words(condition).stream()
                                    .filter(w -> !w.matches("that [a-z]"))
                                    .collect(Collectors.joining(" " + own("and") + " ")))
                    .strip();
        }
        String values = values(compared.group(3));
        return switch (compared.group(2)) {
            case "!=", "not in" -> own("other than {0}", values);
            case "<" -> own("below {0}", bound(values));
            case "<=" -> own("at most {0}", bound(values));
            case ">" -> own("above {0}", bound(values));
            case ">=" -> own("at least {0}", bound(values));
            default -> values;
        };
    }

    /** A value that differs from task to task stands in brackets, as in the sentence of a rule. */
    private static String bound(String values) {
        return values.startsWith("that ") ? "(" + values.substring("that ".length()) + ")" : values;
    }

    private String values(String text) {
        List<String> words = words(text);
        return text.contains("+")
                ? String.join(" ", words).replaceAll("\\s+", " ")
                : String.join(" " + own("or") + " ", words);
    }

    private List<String> words(String text) {
        List<String> words = new ArrayList<>();
        Matcher value = VALUE.matcher(text);
        while (value.find()) {
            words.add(
                    value.group(1) != null
                            ? named(value.group(1))
                            : value.group(2) != null
                                    ? own(Averaging.valueOf(value.group(2)).words())
                                    : value.group(3));
        }
        return words;
    }

    /** A value in words; the address of a level as its agent, where it names one, and its averaging. */
    private String named(String value) {
        int last = value.lastIndexOf('.');
        Averaging averaging = EnumUtils.getEnumIgnoreCase(Averaging.class, value.substring(last + 1));
        if (averaging == null || !value.startsWith(LEVEL.substring(1))) {
            return value.indexOf(' ') < 0 ? name.apply(value) : own(value);
        }
        String agent = value.substring(Math.min(last, LEVEL.length() - 1), last);
        return (agent.isEmpty() ? "" : name.apply(agent) + ", ") + own(averaging.words());
    }

    /** True for a condition on what the conclusion is about anyway. */
    private static boolean ofSubject(String condition, String subject) {
        return List.of(subject, Step.about(subject)).contains(raw(condition));
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
