package org.fumewarden.model;

import java.util.List;

/**
 * A short sentence for the page that is read, shown when the rules concluded what calls for it. It adds no judgement.
 *
 * @param part {@code do-now} or {@code leave}
 * @param calledFor conclusions that call for it, such as {@code caution:low-flow} or {@code trait:air-delivery=powered}; an
 *     asterisk at the end stands for any ending
 * @param says the sentence
 */
public record Act(RowRef ref, String id, String part, List<String> calledFor, String says) implements Row {
    public Act {
        calledFor = List.copyOf(calledFor);
    }

    /** True when a conclusion calls for it. */
    public boolean answers(Conclusion conclusion) {
        String key = key(conclusion);
        return calledFor.stream()
                .anyMatch(c -> c.endsWith("*") ? key.startsWith(c.substring(0, c.length() - 1)) : key.equals(c));
    }

    private static String key(Conclusion conclusion) {
        String kind = conclusion.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT) + ":";
        return kind + conclusion.subject() + (conclusion instanceof Trait trait ? "=" + trait.value() : "");
    }
}
