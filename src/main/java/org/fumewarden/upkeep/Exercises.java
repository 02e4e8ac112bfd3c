package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The exercises of a fit test with what came out of each, as people write them: {@code normal breathing: 2500},
 * {@code normal breathing=2500}, {@code normal breathing 2500 passed}, or the bare figures one after the other.
 *
 * @param each in the order of the text; empty when nothing was written down
 */
record Exercises(List<Exercise> each) {
    /**
     * One exercise.
     *
     * @param factor empty where no figure was written
     * @param told true when a figure, passed or failed was written
     */
    record Exercise(String name, Optional<BigDecimal> factor, boolean told, boolean failed) {}

    private static final String FIGURE = "[0-9]{1,9}(?:\\.[0-9]{1,9})?";
    private static final Pattern FIGURES = Pattern.compile("[0-9.\\s,;/|]+");
    private static final Pattern PART =
            Pattern.compile("(?<name>.*?)[\\s:=(\\u2013-]*[>\\u2265]?(?<![0-9.,\\u2013-])(?<figure>" + FIGURE
                    + ")?[\\s,:=(\\u2013-]*(?<word>passed|failed|pass|fail)?[\\s).]*");
    /** Words and signs that turn an outcome round, or that leave an exercise out. */
    private static final Pattern DOUBTFUL = Pattern.compile(
            ".*(?:[0-9<>~?\\u2264]|\\b(?:not|no|never|nearly|almost|skipped|omitted|missed|missing|stopped|aborted|without|except|left out)\\b).*");

    private static final Pattern SAYS_FAILED = Pattern.compile("(?<!none |no exercise )\\bfail(?:ed)?\\b");
    private static final Pattern ALL =
            Pattern.compile("all(?: (?:7|seven))?(?: exercises)?(?: were)?(?: done| passed)?\\.?");
    private static final Pattern NUMBERED =
            Pattern.compile("(?:\\(?[0-9]{1,2}(?:[.)](?![0-9])|[:=])|(?:exercise|no\\.?) ?[0-9]{1,2}\\b[:=]?)\\s*");
    /** A comma within a figure, beside another sign between figures. */
    private static final Pattern TWO_COMMAS = Pattern.compile("(?s)(?=.*[0-9],[0-9]).*[;/|\\s].*");

    Exercises {
        each = List.copyOf(each);
    }

    /**
     * Reads them.
     *
     * @throws StoreException when the text holds a figure that belongs to no exercise
     */
    static Exercises read(String text) {
        if (text.isBlank()) {
            return new Exercises(List.of());
        }
        boolean bare = FIGURES.matcher(text).matches();
        if (bare && TWO_COMMAS.matcher(text.strip()).matches()) {
            throw unread(text);
        }
        String parting = bare ? "[\\s,;/|]+" : text.matches("(?s).*(?:[;|\n]|\\s/\\s).*") ? "[;|\n]|\\s/\\s" : ",";
        List<Exercise> each = Arrays.stream(text.strip().split(parting))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .map(Exercises::exercise)
                .toList();
        long nameless = each.stream().filter(e -> e.name().isEmpty()).count();
        if (nameless > 0 && nameless < each.size()) {
            throw unread(text);
        }
        return new Exercises(each);
    }

    private static Exercise exercise(String part) {
        String text = part.toLowerCase(Locale.ROOT);
        Matcher numbered = NUMBERED.matcher(text);
        int begin = numbered.lookingAt() && numbered.end() < text.length() ? numbered.end() : 0;
        Matcher read = PART.matcher(text).region(begin, text.length());
        if (!read.matches() || DOUBTFUL.matcher(read.group("name")).matches()) {
            throw unread(part);
        }
        Optional<BigDecimal> factor = Optional.ofNullable(read.group("figure")).map(BigDecimal::new);
        Optional<String> word = Optional.ofNullable(read.group("word"));
        return new Exercise(
                (text.substring(0, begin) + read.group("name")).strip(),
                factor,
                factor.isPresent() || word.isPresent(),
                word.filter(w -> w.startsWith("fail")).isPresent());
    }

    private static StoreException unread(String what) {
        return StoreException.about(
                "exercises",
                "has \"" + what + "\", which cannot be read as the outcome of an exercise.",
                "write one outcome for each exercise, without commas in a figure: \"normal breathing: 2500; talking: 2300\".");
    }

    /** True when the text says of some exercise that it failed, however it is written. */
    static boolean sayFailed(String text) {
        return SAYS_FAILED.matcher(text.toLowerCase(Locale.ROOT)).find();
    }

    /** True when the text says in so many words that all were done. */
    static boolean all(String text) {
        return ALL.matcher(text.strip().toLowerCase(Locale.ROOT)).matches();
    }

    /** How many were done: one may be done twice, as normal breathing is at the start and at the end. */
    int done() {
        long names = each.stream().map(Exercise::name).distinct().count();
        return each.stream().allMatch(e -> e.name().isEmpty()) ? each.size() : (int) Math.min(each.size(), names + 1);
    }

    /** True when every exercise has its fit factor. */
    boolean measured() {
        return !each.isEmpty() && each.stream().allMatch(e -> e.factor().isPresent());
    }

    /** True when every exercise has at least passed or failed. */
    boolean told() {
        return !each.isEmpty() && each.stream().allMatch(Exercise::told);
    }

    Optional<Exercise> lowest() {
        return each.stream().filter(e -> e.factor().isPresent()).min(Comparator.comparing(e -> e.factor()
                .orElseThrow()));
    }

    Optional<Exercise> failed() {
        return each.stream().filter(Exercise::failed).findFirst();
    }
}
