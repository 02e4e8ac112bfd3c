package org.fumewarden.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/** A folder in memory where the system offers one: a killed process loses nothing there either, and flushing costs nothing. */
final class MemoryFolder implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext context) throws IOException {
        return Files.isWritable(MEMORY)
                ? Files.createTempDirectory(MEMORY, "fumewarden-")
                : Files.createTempDirectory("fumewarden-");
    }
}
