package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.DeviceClass;

/** Reads a class of respirator by its id, by its name, or by words that each narrow the classes down; a filter in its mark may stand with it. */
final class ClassWords {
    private static final String WORDS = "words";

    /** Phrase to row, the longest phrase first. */
    private static final List<Map.Entry<String, WordTable.Row>> PHRASES = WordTable.rows("class-words").stream()
            .flatMap(row -> Stream.concat(row.words(WORDS).stream(), row.words("fill").stream())
                    .map(word -> Map.entry(Plain.line(word), row)))
            .sorted(Comparator.comparingInt(e -> -e.getKey().length()))
            .toList();

    /** How people say that nothing is worn. */
    static final Set<String> NONE = said("none");

    /** How people say that nobody goes in. */
    static final Set<String> OUT = said("out");

    /** A mark and its figure that somebody wrote apart. */
    private static final Pattern LOOSE = Pattern.compile("\\b(ffp|th|tm|[abekp]) ([1-4])(?=p? |p?$)");

    private static final Pattern LOOSE_SERIES = Pattern.compile("\\b([nrp]) (95|99|100)\\b");

    /** A word of a filter's mark, in lower case. */
    private static final Pattern MARK = Pattern.compile("(t[hm][123])?((?:ax|sx|no|hg|co|[abek])+[1-3])*(p[123]?)?"
            + "|(t[hm][123])?(abek|ax|hg)(p[123]?)?|ffp[123]|[nrp](95|99|100)|hepa|he|papr100[np]?");

    /** What stands behind a mark and tells of reuse, tests or liquids. */
    private static final List<String> ASIDE = List.of("nr", "r", "d", "sl", "s");

    private final List<DeviceClass> classes;

    private final Function<DeviceClass, String> name;

    ClassWords(List<DeviceClass> classes, Function<DeviceClass, String> name) {
        this.classes = List.copyOf(classes);
        this.name = name;
    }

    /**
     * What an answer means.
     *
     * @param classes that it may mean, in the order of the table; empty when a word of it is not known
     * @param mark of the filter that it names besides; empty when the class says it all
     * @param foreign true when it names a class that these rules do not have
     */
    record Read(List<DeviceClass> classes, String mark, boolean foreign) {}

    Read read(String answer) {
        String joined = Plain.joined(answer);
        for (DeviceClass one : classes) {
            if (Plain.joined(one.id()).equals(joined)
                    || Plain.joined(name.apply(one)).equals(joined)) {
                return new Read(List.of(one), "", false);
            }
        }
        String line = LOOSE_SERIES.matcher(Plain.line(answer)).replaceAll("$1$2");
        String rest = " " + LOOSE.matcher(line).replaceAll("$1$2") + " ";
        List<String> marks = new ArrayList<>();
        for (String name : part84() ? FilterParts.names("niosh") : List.<String>of()) {
            if (rest.contains(" " + name + " ")) {
                marks.add(name);
                rest = rest.replace(" " + name + " ", " ");
            }
        }
        List<DeviceClass> meant = new ArrayList<>(classes);
        boolean narrowed = false;
        boolean foreign = false;
        for (String word : rest.strip().split(" ")) {
            boolean aside = !marks.isEmpty() && (ASIDE.contains(word) || word.equals("p"));
            if (aside || !word.isEmpty() && MARK.matcher(word).matches() && known(word)) {
                marks.add(word);
                rest = rest.replaceFirst(" " + word + " ", " ");
                foreign |= !aside && foreign(word);
                narrowed |= narrow(meant, word);
            }
        }
        for (Map.Entry<String, WordTable.Row> phrase : PHRASES) {
            String words = " " + phrase.getKey() + " ";
            while (rest.contains(words)) {
                rest = rest.replace(words, " ");
                if (!phrase.getValue().words(WORDS).isEmpty()) {
                    meant.removeIf(c -> !fits(c, phrase.getValue().row("is")));
                    narrowed = true;
                }
            }
        }
        if (!rest.isBlank()) {
            return new Read(List.of(), "", false);
        }
        return foreign
                ? new Read(List.of(), "", true)
                : new Read(narrowed ? List.copyOf(meant) : List.of(), String.join(" ", marks), false);
    }

    /** A letter alone is a word of everyday language. */
    private static boolean known(String word) {
        return word.length() > 1 && !List.of("no", "co").contains(word);
    }

    /** Keeps the classes that a mark belongs to; false when it belongs to a filter alone. */
    private boolean narrow(List<DeviceClass> meant, String word) {
        String unit = word.replaceAll("^(t[hm][123]|ffp[123]).*", "$1");
        if (classes.stream().anyMatch(c -> c.id().equals(unit))) {
            return meant.removeIf(c -> !c.id().equals(unit)) || meant.size() == 1;
        }
        String particle = word.replaceAll("^.*?(p[123])?$", "$1");
        if (!particle.isEmpty() && !word.startsWith("papr") && carries(particle)) {
            meant.removeIf(c -> !c.particle().equals(particle) && !c.particle().equals("papr-" + particle));
            return true;
        }
        if (word.matches("[nrp](95|99|100)")) {
            return meant.removeIf(c -> !c.particle().equals("part-84"));
        }
        return false;
    }

    private boolean carries(String particle) {
        return classes.stream()
                .anyMatch(c -> c.particle().equals(particle) || c.particle().equals("papr-" + particle));
    }

    /** True when no class of these rules can bear the mark. */
    private boolean foreign(String word) {
        if (word.matches("[nrp](95|99|100)|papr100[np]?")) {
            return !part84();
        }
        String unit = word.replaceAll("^(t[hm][123]|ffp[123]).*|.*", "$1");
        boolean none = !unit.isEmpty() && classes.stream().noneMatch(c -> c.id().equals(unit));
        return none || part84() && !word.matches("hepa|he");
    }

    private boolean part84() {
        return classes.stream().anyMatch(c -> c.particle().equals("part-84"));
    }

    private static Set<String> said(String key) {
        return WordTable.rows("class-words").stream()
                .flatMap(r -> r.words(key).stream())
                .map(Plain::line)
                .collect(Collectors.toUnmodifiableSet());
    }

    static boolean fits(DeviceClass device, WordTable.Row is) {
        return is.values().keySet().stream().map(String::valueOf).allMatch(key -> is.words(key)
                .contains(value(device, key)));
    }

    private static String value(DeviceClass device, String key) {
        return switch (key) {
            case "id" -> device.id();
            case "family" -> device.family();
            case "seal" -> device.seal();
            case "supply" -> device.supply();
            case "pressure" -> device.pressure();
            case "covers" -> device.covers();
            case "particle" -> device.particle();
            case "escape" -> device.escape();
            case "suit" -> device.id().endsWith("suit") ? "yes" : "no";
            case "level" -> device.id().replaceAll(".*?([1-4])?$", "$1");
            default -> throw new IllegalStateException("no class has a " + key);
        };
    }
}
