package org.fumewarden.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.task.TaskTree;

/**
 * A task file that says what its advice must be.
 *
 * @param own the file as written, which holds the expectations
 * @param tree the task after the file it extends and the changes it makes
 */
public record Scenario(Path file, Located own, Located tree) {

    /** The scenario files below a folder, sorted; the file itself when a single one is named. */
    public static List<Path> files(Path folder) {
        if (!Files.exists(folder)) {
            throw new InputException(new Problem(
                    folder.toString(), 0, "", "does not exist.", "name the folder that holds the scenarios."));
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .filter(p -> p.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a scenario.
     *
     * @throws InputException when the file, or one that it extends, cannot be read
     */
    public static Scenario read(Path file) {
        return new Scenario(file, YamlFiles.read(file), TaskTree.read(file));
    }
}
