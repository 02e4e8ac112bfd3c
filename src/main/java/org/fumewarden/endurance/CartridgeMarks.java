package org.fumewarden.endurance;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Reads the marks of cartridges and particulate filters of 42 CFR 84. */
public final class CartridgeMarks {

    /** 42 CFR 84.170 and 84.175: series and efficiency, and the marks of filters of powered units. */
    private static final Pattern PARTICULATE = Pattern.compile("[nrp](95|99|100)|hepa|he|papr100-[np]");

    /** The same within a longer mark, such as P100 OV; HEPA as 29 CFR 1910.134(b) defines it. */
    private static final Pattern WITHIN = Pattern.compile("(?i)\\b(?:papr100-[np]|[nrp][ -]?(?:95|99|100)|hepa|he)\\b");

    private CartridgeMarks() {}

    /** True for the mark of a particulate filter. */
    public static boolean particulate(String kind) {
        return PARTICULATE.matcher(kind).matches();
    }

    /** The parts that a mark names, each written one way. */
    public static List<String> kinds(String written) {
        return Arrays.stream(WITHIN.matcher(written).replaceAll("+$0+").split("[+,/]"))
                .map(CartridgeMarks::kind)
                .filter(kind -> !kind.isEmpty())
                .toList();
    }

    /** One part, written one way. */
    public static String kind(String words) {
        return words.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll(" cartridge$", "")
                .replaceAll("^[\\s-]+|[\\s-]+$", "")
                .replaceAll("^ov$", "organic vapour")
                .replaceAll("vapor$", "vapour")
                .replace("sulphur", "sulfur")
                .replaceAll("^([nrp])[ -](?=\\d)", "$1")
                .replace(' ', '-');
    }
}
