package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** Reads filter marks as people write them. */
public final class FilterMarks {
    private static final Pattern WHOLE =
            Pattern.compile("(?<gas>(?:(?:AX|SX|NO|HG|CO|[ABEK])\\d*)*)-?(?:P(?<level>\\d))?(?:(?<reuse>NR|R)D?)?");
    private static final Pattern PART = Pattern.compile("(AX|SX|NO|HG|CO|[ABEK])(\\d*)");

    /** A filter of a powered unit after EN 12941 and EN 12942, such as TH3 A1 P R SL; the order is from memory. */
    private static final Pattern POWERED = Pattern.compile("^T[HM]([1-3])(.*)P(NR|R)?(?:SL)?$");

    /** A filter of a powered unit after AS/NZS 1716, such as PAPR-P3; from memory. */
    private static final Pattern PAPR = Pattern.compile("^PAPR-?P([1-3])$");

    /** A filtering facepiece after EN 149, such as FFP3 NR D; V for a valve is common practice, no source. */
    private static final Pattern FACEPIECE = Pattern.compile("^(?:EN149(?::2001)?(?:A1:2009)?)?FFP(\\d)(NR|R)?[DV]*$");

    private FilterMarks() {}

    /** True for the mark of a filtering facepiece, which is no filter of another class of unit. */
    static boolean facepiece(String text) {
        return FACEPIECE.matcher(compact(text)).matches();
    }

    /** What stands before the number of a particle class: the kind of unit that the filter is made for. */
    public static String kind(String text) {
        String compact = compact(text);
        if (POWERED.matcher(compact).matches()) {
            return compact.substring(0, 2).toLowerCase(Locale.ROOT);
        }
        return facepiece(text) ? "ffp" : PAPR.matcher(compact).matches() ? "papr-p" : "p";
    }

    private static String compact(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[\\s/+]", "");
    }

    /**
     * Reads {@code A2B2-P3}, and also {@code a2 b2 p3} or {@code ABEK2-P3}, where one class stands for the letters before
     * it, and {@code TH3 A2 P}, whose particle class is that of the unit, as of
     * {@code FFP3 NR D}; anything else is refused with what was found.
     */
    public static Reckoning<FilterMark> read(String text) {
        String powered = POWERED.matcher(compact(text)).replaceFirst("$2P$1$3");
        String compact =
                FACEPIECE.matcher(PAPR.matcher(powered).replaceFirst("P$1")).replaceFirst("P$1$2");
        Matcher whole = WHOLE.matcher(compact);
        if (compact.isEmpty() || !whole.matches()) {
            return unreadable(text, "it is not made of A, B, E, K, AX, SX, NO, Hg, CO and P1 to P3.");
        }
        try {
            List<GasPart> gases = gases(whole.group("gas"));
            int particle = whole.group("level") == null ? 0 : Integer.parseInt(whole.group("level"));
            FilterMark.Reuse reuse = whole.group("reuse") == null
                    ? FilterMark.Reuse.NOT_STATED
                    : whole.group("reuse").equals("R") ? FilterMark.Reuse.REUSABLE : FilterMark.Reuse.ONE_SHIFT;
            return Reckoning.of(new FilterMark(gases, particle, reuse));
        } catch (NumberFormatException e) {
            return unreadable(text, "its class is not a number from 1 to 3.");
        } catch (BadFigure e) {
            return unreadable(text, e.found());
        }
    }

    private static List<GasPart> gases(String letters) {
        List<GasPart> parts = new ArrayList<>();
        List<GasType> waiting = new ArrayList<>();
        Matcher part = PART.matcher(letters);
        while (part.find()) {
            GasType type = GasType.valueOf(part.group(1));
            String figure = part.group(2);
            if (type.gradeKind() == GasType.Grade.NONE) {
                parts.add(new GasPart(type, figure.isEmpty() ? 0 : Integer.parseInt(figure)));
            } else if (figure.isEmpty()) {
                waiting.add(type);
            } else {
                int grade = Integer.parseInt(figure);
                waiting.add(type);
                waiting.forEach(each -> parts.add(new GasPart(each, grade)));
                waiting.clear();
            }
        }
        if (!waiting.isEmpty()) {
            throw new BadFigure(
                    waiting.get(0).letters() + " has no class.",
                    "Write its class, such as " + waiting.get(0).letters() + "2.");
        }
        return parts;
    }

    private static Reckoning<FilterMark> unreadable(String text, String why) {
        return Reckoning.refuse(
                Soundness.OUTSIDE_TABLE,
                "The filter mark \"" + text + "\" cannot be read: " + why,
                "Write it like A2B2-P3.");
    }
}
