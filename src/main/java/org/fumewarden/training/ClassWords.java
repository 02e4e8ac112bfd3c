package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.model.DeviceClass;

/** Reads a class of respirator by its id, by its name, or by words that each narrow the classes down. */
final class ClassWords {
    private static final String WORDS = "words";

    /** Phrase to row, the longest phrase first. */
    private static final List<Map.Entry<String, WordTable.Row>> PHRASES = WordTable.rows("class-words").stream()
            .flatMap(row -> Stream.concat(row.words(WORDS).stream(), row.words("fill").stream())
                    .map(word -> Map.entry(Plain.line(word), row)))
            .sorted(Comparator.comparingInt(e -> -e.getKey().length()))
            .toList();

    private final List<DeviceClass> classes;

    ClassWords(List<DeviceClass> classes) {
        this.classes = List.copyOf(classes);
    }

    /** The classes that an answer may mean, in the order of the table; empty when a word of it is not known. */
    List<DeviceClass> read(String answer) {
        String joined = Plain.joined(answer);
        Optional<DeviceClass> exact = classes.stream()
                .filter(c -> Plain.joined(c.id()).equals(joined)
                        || Plain.joined(c.name()).equals(joined))
                .findFirst();
        if (exact.isPresent()) {
            return List.of(exact.get());
        }
        String rest = " " + Plain.line(answer).replaceAll("\\b(ffp|th|tm) ([1-4])\\b", "$1$2") + " ";
        List<DeviceClass> meant = new ArrayList<>(classes);
        boolean narrowed = false;
        for (String word : rest.strip().split(" ")) {
            Optional<DeviceClass> named = shortId(word);
            if (named.isPresent()) {
                rest = rest.replaceFirst(" " + word + " ", " ");
                meant.removeIf(c -> !c.id().equals(named.get().id()));
                narrowed = true;
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
        return rest.isBlank() && narrowed ? List.copyOf(meant) : List.of();
    }

    /** A class whose id is one short word, such as th3 or ffp2. */
    private Optional<DeviceClass> shortId(String word) {
        return classes.stream().filter(c -> c.id().equals(word)).findFirst();
    }

    private static boolean fits(DeviceClass device, WordTable.Row is) {
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
            case "level" -> device.id().replaceAll(".*?([1-4])?$", "$1");
            default -> throw new IllegalStateException("no class has a " + key);
        };
    }
}
