package org.fumewarden.training;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a filter consists of, read from its mark: letters and classes of EN 14387, EN 143, EN 149, EN 12941 and EN 12942, PAPR classes of
 * AS/NZS 1716, classes and cartridges of 42 CFR 84. Order and case do not matter.
 *
 * @param units classes of powered units in the mark, such as TH3
 * @param gases gas parts with their class, 0 where the mark has none
 * @param particles particle parts, such as P3, P, N95; several where one of them is enough
 */
record FilterParts(Set<String> units, Map<String, Integer> gases, Set<String> particles) {
    private static final Pattern PART =
            Pattern.compile("(?<unit>T[HM][123])|PAPR ?(?<papr>P ?[123]|100 ?[NP])|(?<ffp>FFP[123])"
                    + "|(?<part84>[NRP](?:100|99|95))|(?<he>HEPA|HE)|(?<particle>P[123]?)|(?<gas>AX|SX|NO|HG|CO|[ABEK])(?<level>[0-9]*)"
                    + "|(?<aside>NR|SL|R|S|D| +)");
    private static final Pattern LEVEL = Pattern.compile("(PAPRP|FFP|N|R|P)([0-9]+)");

    /** A letter and its figure that somebody wrote apart. */
    private static final Pattern LOOSE_DIGIT = Pattern.compile("([A-Z]) ([0-9])");

    private static final Set<String> FILL = Set.of(
            "filter",
            "filters",
            "type",
            "typ",
            "class",
            "klasse",
            "and",
            "und",
            "with",
            "mit",
            "or",
            "oder",
            "a",
            "higher",
            "eine",
            "hoehere",
            "cartridge",
            "cartridges",
            "plus",
            "combined",
            "combination",
            "kombinationsfilter",
            "the",
            "white",
            "weiss");

    /** The names of cartridges of a system, plain. */
    static List<String> names(String system) {
        return WordTable.rows("cartridges").stream()
                .filter(r -> r.text("system").equals(system))
                .flatMap(r -> r.words("words").stream())
                .map(Plain::line)
                .toList();
    }

    /** What the type of a gas part stands for; empty when its name says it. */
    static String meaning(String part, String language) {
        return WordTable.rows("cartridges").stream()
                .filter(r -> r.text("part").equals(part))
                .findFirst()
                .flatMap(r -> r.row("for").optional(language))
                .orElse("");
    }

    /** The parts of a mark or of cartridges by name; empty when anything in it cannot be read. */
    static Optional<FilterParts> read(String text, String system) {
        String rest = " " + Plain.line(text) + " ";
        Map<String, Integer> gases = new TreeMap<>();
        for (WordTable.Row row : WordTable.rows("cartridges")) {
            if (row.text("system").equals(system)) {
                for (String name : row.words("words")) {
                    String named = " " + Plain.line(name) + " ";
                    if (rest.contains(named)) {
                        rest = rest.replace(named, " ");
                        gases.put(row.text("part"), 0);
                    }
                }
            }
        }
        StringBuilder marks = new StringBuilder();
        for (String word : rest.strip().split(" ")) {
            boolean fill = FILL.contains(word) && !(word.equals("a") && system.equals("en"));
            marks.append(fill ? "" : word.toUpperCase(Locale.ROOT) + " ");
        }
        return marks(LOOSE_DIGIT.matcher(marks).replaceAll("$1$2"), gases);
    }

    private static Optional<FilterParts> marks(String marks, Map<String, Integer> gases) {
        Set<String> units = new TreeSet<>();
        Set<String> particles = new TreeSet<>();
        List<String> waiting = new ArrayList<>();
        Matcher part = PART.matcher(marks);
        int at = 0;
        while (at < marks.length() && part.region(at, marks.length()).lookingAt()) {
            at = part.end();
            if (part.group("unit") != null) {
                units.add(part.group("unit"));
            } else if (part.group("gas") != null) {
                waiting.add(part.group("gas"));
                if (!part.group("level").isEmpty()) {
                    int level = Integer.parseInt(part.group("level").substring(0, 1));
                    waiting.forEach(letter -> gases.put(letter, level));
                    waiting.clear();
                }
            } else if (part.group("papr") != null) {
                particles.add("PAPR" + part.group("papr").replace(" ", ""));
            } else if (part.group("he") != null) {
                particles.add("HE");
            } else if (part.group("aside") == null) {
                particles.add(part.group());
            }
        }
        waiting.forEach(letter -> gases.put(letter, 0));
        boolean whole = at == marks.length() && !(gases.isEmpty() && particles.isEmpty());
        return whole ? Optional.of(new FilterParts(units, gases, particles)) : Optional.empty();
    }

    /** True when it holds a class that the system of the code does not know: 42 CFR 84 under EN, and the other way round. */
    boolean foreign(String system) {
        return system.equals("en")
                ? particles.stream().anyMatch(p -> p.matches("[NRP](95|99|100)|PAPR100[NP]"))
                : !units.isEmpty()
                        || gases.values().stream().anyMatch(level -> level > 0)
                        || particles.stream().anyMatch(p -> p.matches("(FFP|P|PAPRP)[123]"));
    }

    /** True when a class of respirator does not hold all of it by its name: gas parts, a part beside a unit, series of 42 CFR 84. */
    boolean namesMoreThanAClass() {
        return !gases.isEmpty()
                || !units.isEmpty() && !particles.isEmpty()
                || particles.stream().anyMatch(p -> p.matches("[NRP](95|99|100)"));
    }

    /** Gas parts of this filter that the other lacks or has in a lower class. */
    List<String> gasesBeyond(FilterParts other) {
        return gases.keySet().stream()
                .filter(g -> other.gases.getOrDefault(g, -1) < gases.get(g))
                .toList();
    }

    /** True when each particle part of this filter is at least one of those that are enough. */
    boolean stopsParticlesOf(FilterParts needed) {
        return !particles.isEmpty()
                && particles.stream().allMatch(p -> needed.particles.stream().anyMatch(n -> atLeast(p, n)));
    }

    private static boolean atLeast(String part, String needed) {
        Matcher one = LEVEL.matcher(part);
        Matcher other = LEVEL.matcher(needed);
        return part.equals(needed)
                || one.matches()
                        && other.matches()
                        && one.group(1).equals(other.group(1))
                        && Integer.parseInt(one.group(2)) >= Integer.parseInt(other.group(2))
                        && one.group(2).length() > 1 == other.group(2).length() > 1;
    }
}
