package org.fumewarden.model;

import java.util.List;
import java.util.Set;

/**
 * A short sentence for the page that is read, shown when the rules concluded what calls for it. It adds no judgement.
 *
 * @param part {@code do-now}; in its place {@code stop}, {@code wearer} or {@code conflict} where the work must not start; or {@code leave}
 * @param calledFor what calls for it: a conclusion such as {@code caution:low-flow} or {@code trait:lev-present=true}, what is
 *     worn such as {@code worn:powered}, or an answer such as {@code answer:place=outdoors}; an asterisk at the end stands for
 *     any ending
 * @param unless what makes it needless, likewise; {@code inhand:barred} where the class that lies ready is ruled out
 * @param says the sentence
 */
public record Act(RowRef ref, String id, String part, List<String> calledFor, List<String> unless, String says)
        implements Row {
    public Act {
        calledFor = List.copyOf(calledFor);
        unless = List.copyOf(unless);
    }

    /** True when one of the keys calls for it, and none speaks against it. */
    public boolean calledForBy(Set<String> keys) {
        return unless.stream().noneMatch(keys::contains)
                && calledFor.stream().anyMatch(c -> keys.stream().anyMatch(k -> fits(c, k)));
    }

    private static boolean fits(String call, String key) {
        return call.endsWith("*") ? key.startsWith(call.substring(0, call.length() - 1)) : key.equals(call);
    }

    /** The key of a conclusion, such as {@code caution:low-flow}. A duty that what is unknown may yet rule out calls for nothing. */
    public static String key(Conclusion conclusion) {
        String kind = conclusion.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT) + ":";
        if (conclusion instanceof Owed owed && !owed.certain()) {
            return kind + "open:" + owed.subject();
        }
        return kind + conclusion.subject() + (conclusion instanceof Trait trait ? "=" + trait.value() : "");
    }
}
