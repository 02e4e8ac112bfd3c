package org.fumewarden.duties;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.StoreException;

/**
 * The form of an entry, as a command or the page filled it in: the one way from words into the log.
 *
 * @param values by field name, with those that every entry has
 */
public record EntryForm(String kind, Map<String, String> values) {
    /** The kind that takes an earlier entry back and puts nothing in its place. */
    public static final String VOID = "void";
    /** What an entry of any kind may say. */
    public static final List<String> COMMON = List.of("item", "on", "by", "corrects", "corrects-because");

    /**
     * What goes into the log.
     *
     * @param says how it was judged; empty when there was nothing to judge
     */
    public record Filled(Draft draft, String says) {}

    public EntryForm {
        values = Map.copyOf(values);
    }

    /**
     * What goes into the log.
     *
     * @param undated the day of an entry that names none
     * @throws StoreException when a field is missing or cannot be what it is
     */
    public Filled filled(Judging judging, String undated) {
        Judging.Judged judged = kind.equals(VOID)
                ? new Judging.Judged(new Details.Correction(number("entry"), value("reason"), Optional.empty()), "")
                : judging.of(kind, value("item"), own());
        Details details = value("corrects").isEmpty()
                ? judged.details()
                : new Details.Correction(number("corrects"), value("corrects-because"), Optional.of(judged.details()));
        String on = value("on").isEmpty() ? undated : value("on");
        return new Filled(new Draft(value("item"), Forms.day("on", on), value("by"), details), judged.says());
    }

    private Map<String, String> own() {
        Map<String, String> own = new LinkedHashMap<>(values);
        own.keySet().removeAll(COMMON);
        return own;
    }

    private String value(String name) {
        return values.getOrDefault(name, "").strip();
    }

    private long number(String name) {
        return Forms.entryNumber(name, value(name));
    }
}
