package org.fumewarden.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of the rules that a test may spoil. */
public final class EditedRules {
    private EditedRules() {}

    /** Copies the shared rules, those of one code that stands alone, and more folders. */
    public static Path copy(Path into, String... more) {
        Path target = into.resolve("rules");
        Stream.concat(Stream.of("shared", "gb"), Stream.of(more))
                .forEach(part -> folder(Path.of("rules", part), target.resolve(part)));
        return target;
    }

    /** Copies a folder with all that is in it. */
    public static void folder(Path from, Path to) {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(path).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(path, copy);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces the first occurrence of a text in a file of the copy; refuses when it is not there. */
    public static void edit(Path rules, String file, String find, String replacement) {
        Path path = rules.resolve(file);
        try {
            String text = Files.readString(path);
            int at = text.indexOf(find);
            if (at < 0) {
                throw new IllegalArgumentException(file + " does not hold " + find);
            }
            Files.writeString(path, text.substring(0, at) + replacement + text.substring(at + find.length()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file of the copy as it is now. */
    static String text(Path rules, String file) {
        try {
            return Files.readString(rules.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Adds text at the end of a file of the copy. */
    public static void append(Path rules, String file, String text) {
        try {
            Files.writeString(rules.resolve(file), text(rules, file) + "\n" + text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
