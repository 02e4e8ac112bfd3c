package org.fumewarden.task;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlEdits;
import org.fumewarden.codes.YamlFiles;

/** A task file as a tree, after the file it extends and the changes it makes. */
public final class TaskTree {
    /** Stands for the file, before its path, of a value that none holds. */
    public static final String GIVEN = "the value given for ";

    private static final int DEEPEST = 5;

    private TaskTree() {}

    /** Reads a file from disk, following {@code extends}. */
    public static Located read(Path path) {
        return read(path, 0);
    }

    /** Reads a task from text. It must stand alone: text from elsewhere never names files of this machine. */
    public static Located parse(String name, String text) {
        Located root = YamlFiles.parse(name, text);
        if (!root.isMap()) {
            root.complain("is not a task file.", "begin with a line \"title: ...\" and indent what belongs together.");
            root.settle();
        }
        root.entries().forEach((key, entry) -> {
            if (key.equals("extends") || key.equals("change")) {
                entry.complain("is for files on disk.", "put all entries into one file.");
            }
        });
        root.settle();
        return root;
    }

    /** The bytes of a file and of those it extends, as far as they can be read: whoever has the same bytes has the same task. */
    public static byte[] sources(Path path) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Path next = path;
        for (int depth = 0; depth <= DEEPEST && next != null; depth++) {
            try {
                byte[] bytes = YamlFiles.bytes(next);
                all.writeBytes(bytes);
                String text = YamlFiles.text(next.toString(), bytes);
                Path at = next;
                next = text.contains("extends")
                        ? top(YamlFiles.parse(next.toString(), text), "extends")
                                .map(at::resolveSibling)
                                .orElse(null)
                        : null;
            } catch (InputException e) {
                // What cannot be read is no task; the reader says why.
                all.writeBytes(e.getMessage().getBytes(StandardCharsets.UTF_8));
                next = null;
            }
        }
        return all.toByteArray();
    }

    private static Located read(Path path, int depth) {
        Located own = YamlFiles.read(path);
        if (!own.isMap()) {
            own.complain("is not a task file.", "begin with a line \"title: ...\" and indent what belongs together.");
            own.settle();
        }
        Map<String, Located> entries = own.entries();
        Located parent = entries.get("extends");
        if (parent == null) {
            return own;
        }
        if (depth >= DEEPEST) {
            throw new InputException(new Problem(
                    path.toString(),
                    parent.line(),
                    "extends",
                    "goes in a circle.",
                    "extend a file that stands alone."));
        }
        Path extended = path.resolveSibling(parent.text());
        own.settle();
        if (!Files.isRegularFile(extended)) {
            parent.complain(
                    "names " + (Files.exists(extended) ? "no file" : "a file that is not there") + ": "
                            + Located.shown(extended.toString()) + ".",
                    "give its path from the folder of this file.");
            own.settle();
        }
        Located base = read(extended, depth + 1);
        for (Map.Entry<String, Located> entry : entries.entrySet()) {
            switch (entry.getKey()) {
                case "extends" -> {}
                case "change" -> change(base, entry.getValue());
                default -> YamlEdits.set(base, entry.getKey(), entry.getValue());
            }
        }
        own.settle();
        return base;
    }

    private static void change(Located base, Located changes) {
        changes.entries().forEach((path, value) -> {
            if (!YamlEdits.set(base, path, value)) {
                value.complain(
                        "names a place that the extended file does not have: \"" + Located.shown(path) + "\".",
                        "a path such as wearer.facial-hair or exposures.0.twa.");
            }
        });
        changes.settle();
    }

    /** Sets one value, written as in a file. */
    public static void set(Located root, String path, String value) {
        Located parsed = YamlFiles.parse(GIVEN + path, value.isBlank() ? "\"\"" : value);
        if (!YamlEdits.set(root, path, parsed)) {
            throw new InputException(new Problem(
                    "the command line:",
                    0,
                    path,
                    "names a place that the task does not have.",
                    "a path such as wearer.facial-hair or exposures.0.twa."));
        }
    }

    /**
     * What is found by the code that a task names, or an option in its place; one that is not there is told where it was named.
     *
     * @param option true when an option names it
     */
    public static <T> T byCode(Located root, boolean option, Supplier<T> found) {
        root.settle();
        try {
            return found.get();
        } catch (InputException e) {
            throw new InputException(e.problems().stream()
                    .map(p -> p.field().equals(CodeBook.CODE) && p.line() == 0
                            ? option
                                    ? new Problem("--code", 0, "", p.message(), p.remedy())
                                    : root.entries().get(CodeBook.CODE).problem(p.message(), p.remedy())
                            : p)
                    .toList());
        }
    }

    /** The words of an entry at the top of the file, when it is there. */
    public static Optional<String> top(Located root, String name) {
        return Optional.ofNullable(root.entries().get(name)).map(Located::text);
    }
}
