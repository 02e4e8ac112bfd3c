package org.fumewarden.training;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Numbers;

/** Reads a protection factor as people write it: 20, "APF 20", "20,0", "a factor of 20", "20 times". */
final class FactorWords {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:(?:an?|the|ein|required|assigned|protection|at least|mindestens|factor|faktor|schutzfaktor|apf|vdgw|of|von|x|×|=|:)[\\s-]*)*"
                    + "(?<number>[0-9][0-9.,'\\s]*)\\s*(?:-?\\s*(?:x|×|times|fold|fach|fache))?\\.?",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private FactorWords() {}

    static Optional<BigDecimal> read(String text) {
        Matcher written = WRITTEN.matcher(text.replaceAll("^[\\s\"'(]+|[\\s\"')]+$", ""));
        if (!written.matches()) {
            return Optional.empty();
        }
        String number = written.group("number").strip().replaceAll("[.,]$", "");
        List<String> readings = Numbers.readings(number);
        return readings.isEmpty() ? Optional.empty() : Optional.of(Numbers.decimal(readings.get(0)));
    }
}
