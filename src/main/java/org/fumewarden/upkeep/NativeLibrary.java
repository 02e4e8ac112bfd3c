package org.fumewarden.upkeep;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fumewarden.codes.OutputFile;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of the database that is no Java. Left to itself the driver unpacks it into the temp folder at every start, where a
 * killed process leaves it, and where nothing may be run on some machines. With a cache folder it is unpacked once and stays.
 */
final class NativeLibrary {
    /** Set by the launcher; without it the driver does as it does. */
    private static final String CACHE = "fumewarden.cache";

    private static final String PATH = "org.sqlite.lib.path";

    private NativeLibrary() {}

    static void prepare() {
        String cache = System.getProperty(CACHE, "");
        if (cache.isEmpty() || System.getProperty(PATH) != null) {
            return;
        }
        String name = LibraryLoaderUtil.getNativeLibName();
        String inside = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
        Path folder = Path.of(cache, "sqlite-" + SQLiteJDBCLoader.getVersion());
        Path file = folder.resolve(name);
        try (InputStream packed = SQLiteJDBCLoader.class.getResourceAsStream(inside)) {
            if (packed == null) {
                return;
            }
            byte[] wanted = packed.readAllBytes();
            if (!Files.isRegularFile(file) || Files.size(file) != wanted.length) {
                Files.createDirectories(folder);
                new OutputFile("", file, true).write(wanted);
            }
            System.setProperty(PATH, folder.toString());
            System.setProperty("org.sqlite.lib.name", name);
        } catch (IOException | org.fumewarden.codes.InputException e) {
            // No cache folder that may be written: the driver unpacks for itself.
        }
    }
}
