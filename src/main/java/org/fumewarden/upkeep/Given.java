package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fumewarden.codes.Fault;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Keyed;

/** Constructor checks and fillers: records hold no null. */
final class Given {
    private static final int LONGEST = 20_000;
    private static final int LONGEST_ID = 100;
    private static final int DIGITS = 15;

    private Given() {}

    /** A text that must be there, with white space at its ends removed. */
    static String needed(String field, String value) {
        String text = optional(field, value);
        if (text.isEmpty()) {
            throw StoreException.about(field, "is missing.", "give " + field + ".")
                    .as(Fault.MISSING);
        }
        return text;
    }

    /** An id: composed as Unicode composes it (NFC), in one line, not longer than a label on a thing. */
    static String id(String field, String value) {
        String id = composed(needed(field, value));
        if (id.length() > LONGEST_ID) {
            throw StoreException.about(
                    field,
                    "has " + id.length() + " characters; at most " + LONGEST_ID + " are kept.",
                    "write the number or mark that stands on the thing.");
        }
        if (id.codePoints().anyMatch(Given::unseen)) {
            throw StoreException.about(
                    field,
                    "holds a character that no one sees, such as a line break or a mark of direction.",
                    "type it again.");
        }
        return id;
    }

    /** The same text in the form in which a letter with its accent is one sign: two keyboards then write one id. */
    static String composed(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    private static boolean unseen(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED;
    }

    /** A text that may be left out. */
    static String optional(String field, String value) {
        String text = value == null ? "" : value.strip();
        if (text.length() > LONGEST) {
            throw StoreException.about(
                    field,
                    "has " + text.length() + " characters; at most " + LONGEST + " are kept.",
                    "keep long papers beside the store and name them here.");
        }
        if (!wellFormed(text)) {
            throw StoreException.about(
                    field, "holds half of a surrogate pair, which no text file can carry.", "type the text again.");
        }
        return text;
    }

    /** Which kind of mask: {@code half}, filtering facepieces included, or {@code full}; it may be left out. */
    static String face(String value) {
        String face = optional("face", value).toLowerCase(Locale.ROOT);
        if (!face.isEmpty() && !face.equals("half") && !face.equals("full")) {
            throw StoreException.about(
                            "face",
                            "cannot be \"" + face + "\".",
                            "write half (filtering facepieces included) or full.")
                    .as(Fault.CHOICE);
        }
        return face;
    }

    /** The constant with a key. */
    static <E extends Enum<E> & Keyed> E one(Class<E> type, String field, String key) {
        return Keyed.find(type, key).orElseThrow(() -> StoreException.about(
                        field, "cannot be \"" + key + "\".", "use one of: " + String.join(", ", Keyed.keys(type)) + ".")
                .as(Fault.CHOICE));
    }

    /**
     * The day of a part from which a period counts.
     *
     * <p>The manufacture date counts unless the first fitting is documented: BGR/GUV-R 190 (2011) section 3.3.2.
     */
    static Optional<LocalDate> dayOfPart(
            Anchor anchor, Optional<LocalDate> manufactured, Optional<LocalDate> firstFitted) {
        return switch (anchor) {
            case MANUFACTURE_DATE -> firstFitted.or(() -> manufactured);
            case FIRST_FITTED_DATE -> firstFitted;
            default -> Optional.empty();
        };
    }

    static <T> T present(String field, T value) {
        if (value == null) {
            throw StoreException.about(field, "is missing.", "give " + field + ".")
                    .as(Fault.MISSING);
        }
        return value;
    }

    static <T> Optional<T> maybe(Optional<T> value) {
        return value == null ? Optional.empty() : value;
    }

    /** A text that may be left out; blank counts as left out. */
    static Optional<String> text(String field, Optional<String> value) {
        return maybe(value).map(t -> optional(field, t)).filter(t -> !t.isEmpty());
    }

    static <T> List<T> list(List<T> value) {
        return value == null ? List.of() : List.copyOf(value);
    }

    static SortedMap<String, List<String>> facts(Map<String, List<String>> value) {
        SortedMap<String, List<String>> copy = new TreeMap<>();
        if (value != null) {
            value.forEach((fact, values) -> copy.put(needed("fact", fact), List.copyOf(values)));
        }
        return Collections.unmodifiableSortedMap(copy);
    }

    /** An amount that may be left out but is never below zero. */
    static Optional<BigDecimal> amount(String field, Optional<BigDecimal> value) {
        Optional<BigDecimal> amount = maybe(value);
        if (amount.isPresent() && amount.get().signum() < 0) {
            throw StoreException.about(field, "cannot be " + amount.get() + ": it is below zero.", "check the sign.");
        }
        if (amount.isPresent()
                && (amount.get().precision() > DIGITS || Math.abs(amount.get().scale()) > DIGITS)) {
            throw StoreException.about(
                    field, "has more digits than any instrument shows.", "write at most " + DIGITS + " digits.");
        }
        return amount;
    }

    private static boolean wellFormed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = Character.isHighSurrogate(c)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (pair) {
                i++;
            } else if (Character.isSurrogate(c)) {
                return false;
            }
        }
        return true;
    }
}
