package org.fumewarden.shift;

import java.util.List;
import java.util.Optional;
import org.fumewarden.endurance.CartridgeMarks;
import org.fumewarden.endurance.FilterMark;
import org.fumewarden.endurance.FilterMarks;
import org.fumewarden.endurance.GasPart;
import org.fumewarden.model.FilterMatch;

/**
 * The part of the fitted filter that is to hold one gas.
 *
 * @param written the mark of the whole filter
 * @param part the gas type of a European mark, empty for a cartridge of 42 CFR 84 or when the filter lacks it
 * @param cartridge the cartridge description, empty for a European mark or when the filter lacks it
 * @param several true for a cartridge that covers more than one type of gas
 * @param stated true when the task file gives the mark
 */
record Fitted(String written, Optional<GasPart> part, Optional<String> cartridge, boolean several, boolean stated) {

    boolean holds() {
        return part.isPresent() || cartridge.isPresent();
    }

    static Fitted of(FilterMatch match, Optional<FilterMark> mark, Optional<String> written) {
        if (match.system().equals("en")) {
            Optional<GasPart> needed = FilterMarks.read(match.type()).value().map(lowest -> lowest.gases()
                    .get(0));
            boolean stated = written.isPresent();
            Optional<GasPart> part = stated
                    ? mark.flatMap(fitted -> fitted.gases().stream()
                            .filter(each -> needed.filter(need -> need.type() == each.type())
                                    .isPresent())
                            .findFirst())
                    : needed;
            return new Fitted(
                    mark.map(FilterMark::written).orElse(written.orElse(match.type())),
                    part,
                    Optional.empty(),
                    false,
                    stated);
        }
        String needed = CartridgeMarks.kind(match.type());
        List<String> kinds = written.map(CartridgeMarks::kinds).orElse(List.of(needed));
        return new Fitted(
                written.orElse(match.type()),
                Optional.empty(),
                Optional.of(needed).filter(kinds::contains),
                kinds.size() > 1,
                written.isPresent());
    }

    /** True when every part of the text is the description of a cartridge, or a particulate mark of 42 CFR 84. */
    static boolean cartridges(String written, List<ShiftTables.TestGas> tests) {
        return CartridgeMarks.kinds(written).stream()
                .allMatch(kind -> CartridgeMarks.particulate(kind)
                        || tests.stream().anyMatch(test -> test.test().mark().equals(kind)));
    }
}
