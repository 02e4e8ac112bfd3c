package org.fumewarden.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.endurance.FilterMark;
import org.fumewarden.endurance.FilterMarks;
import org.fumewarden.endurance.GasPart;
import org.fumewarden.endurance.GasType;

/** Writes a combined filter the way its standard marks it. */
final class FilterWords {
    private static final Pattern MASK_FILTER = Pattern.compile("p([1-3])");
    private static final Pattern POWERED = Pattern.compile("(T[HM][1-3]) P(.*)");

    private final Optional<List<GasPart>> parts;

    /**
     * Words for filters that hold some gases.
     *
     * @param types gas types as the filter tables have them
     */
    FilterWords(List<String> types) {
        this.parts = parts(types);
    }

    /** The types as parts of a mark; empty when one of them has no mark of its own, or two are of the same type. */
    private static Optional<List<GasPart>> parts(List<String> types) {
        List<GasPart> parts = new ArrayList<>();
        for (String type : types) {
            Optional<FilterMark> mark = FilterMarks.read(type).value();
            if (mark.isEmpty() || mark.get().gases().size() != 1) {
                return Optional.empty();
            }
            parts.add(mark.get().gases().get(0));
        }
        boolean each = parts.stream().map(GasPart::type).distinct().count() == parts.size();
        return each ? Optional.of(parts) : Optional.empty();
    }

    /**
     * The mark of a filter that holds all of these gas types and particles, such as {@code A1E1-P3} after EN 14387 or
     * {@code TH3 A1E1 P} after EN 12941 and EN 12942 (the order of their marks is from memory). Empty where the standard's
     * way is not known here, so that the parts are named one by one: types of their own in powered units, an open class,
     * descriptions of another system.
     *
     * @param device id of the particle filter that the device carries
     * @param particle its name
     */
    Optional<String> combined(String device, String particle) {
        return parts.flatMap(gases -> combined(gases, device, particle));
    }

    private static Optional<String> combined(List<GasPart> parts, String device, String particle) {
        Matcher mask = MASK_FILTER.matcher(device);
        Matcher powered = POWERED.matcher(particle);
        boolean own = parts.stream().map(GasPart::type).anyMatch(GasType::onlyWithP3);
        if (mask.matches() && (!own || mask.group(1).equals("3"))) {
            return Optional.of(
                    new FilterMark(parts, Integer.parseInt(mask.group(1)), FilterMark.Reuse.NOT_STATED).written());
        }
        if (powered.matches() && !own) {
            String gases = new FilterMark(parts, 0, FilterMark.Reuse.NOT_STATED).written();
            return Optional.of(powered.group(1) + " " + gases + " P" + powered.group(2));
        }
        return Optional.empty();
    }
}
