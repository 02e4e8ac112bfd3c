package org.fumewarden.codes;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known words that a mistyped word may have meant. */
public final class Nearest {
    private static final int SHOWN = 3;
    private static final int FEW = 8;
    private static final int LONG = 5;
    /** No word that is known comes near it; comparing longer ones takes long. */
    private static final int LONGEST = 200;

    private static final double ALIKE = 0.75;
    private static final JaroWinklerSimilarity SIMILARITY = new JaroWinklerSimilarity();

    private Nearest() {}

    /** The nearest known words, best first. */
    public static List<String> to(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return List.of();
        }
        String wanted = word.toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(k -> likeness(wanted, k) >= ALIKE)
                .sorted(Comparator.comparingDouble((String k) -> -likeness(wanted, k))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(SHOWN)
                .toList();
    }

    /** The remedy: the nearest words, and all of them when they are few. */
    public static String remedy(String word, Collection<String> known) {
        List<String> near = to(word, known);
        String some = known.stream().sorted().limit(FEW).collect(Collectors.joining(", "));
        if (near.isEmpty()) {
            return "use one of: " + some + (known.size() > FEW ? ", ... (" + known.size() + " in all)." : ".");
        }
        String best = quoted(near);
        return "did you mean " + best + "?"
                + (known.size() > FEW || known.size() == near.size() ? "" : " Known: " + some + ".");
    }

    /**
     * The remedy for the name of a substance or of a thing: only a slip of one letter, or of two letters swapped, in a
     * long word without digits is guessed at, for one name that is like another is still another one.
     */
    public static Optional<String> slip(String word, Collection<String> known) {
        List<String> near = slips(word, known);
        return near.isEmpty() ? Optional.empty() : Optional.of("did you mean " + quoted(near) + "?");
    }

    /** The names that are only mistyped. */
    public static List<String> slips(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        return to(word, known).stream()
                .filter(k -> k.length() >= LONG && k.chars().noneMatch(Character::isDigit))
                .filter(k -> slipped(wanted, k.toLowerCase(Locale.ROOT)))
                .toList();
    }

    /** The remedy for the name of a substance that no table holds. */
    public static String substance(String word, Collection<String> known) {
        return slip(word, known).orElse("write another name of the same substance, or ask a competent person.");
    }

    /** The remedy that names words to choose from. */
    public static String oneOf(List<String> words) {
        return "write " + quoted(words) + ".";
    }

    private static String quoted(List<String> words) {
        return words.stream().map(n -> "\"" + n + "\"").collect(Collectors.joining(" or "));
    }

    /** Half of the longer word may be written otherwise; with more it is another word, though it have the same letters. */
    private static boolean mistyped(String wanted, String known) {
        int most = Math.max(wanted.length(), known.length()) / 2;
        return new LevenshteinDistance(most).apply(wanted, known) >= 0;
    }

    private static boolean slipped(String wanted, String known) {
        int differ = StringUtils.indexOfDifference(wanted, known);
        return differ < 0
                || new LevenshteinDistance(1).apply(wanted, known) >= 0
                || wanted.length() == known.length()
                        && differ + 1 < known.length()
                        && known.equals(wanted.substring(0, differ)
                                + wanted.charAt(differ + 1)
                                + wanted.charAt(differ)
                                + wanted.substring(differ + 2));
    }

    private static double likeness(String wanted, String known) {
        String candidate = known.toLowerCase(Locale.ROOT);
        double likeness = mistyped(wanted, candidate) ? SIMILARITY.apply(wanted, candidate) : 0;
        boolean part = wanted.length() > 3 && (candidate.contains(wanted) || wanted.contains(candidate));
        return part ? Math.max(likeness, 0.9) : likeness;
    }
}
