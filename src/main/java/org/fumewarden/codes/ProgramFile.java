package org.fumewarden.codes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files inside the program; without one of them it is broken. */
public final class ProgramFile {
    private ProgramFile() {}

    /** A file that lies beside a class, or at its whole path. */
    public static byte[] bytes(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(Class<?> beside, String name) {
        return new String(bytes(beside, name), StandardCharsets.UTF_8);
    }
}
