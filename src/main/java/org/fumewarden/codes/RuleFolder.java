package org.fumewarden.codes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of a rule base, from a folder on disk or from inside the program. */
public final class RuleFolder {
    private static final String SHIPPED = "/rulebase/";
    private static final String INDEX = "index.txt";

    private final Map<String, byte[]> files;
    private final String origin;

    private RuleFolder(String origin, Map<String, byte[]> files) {
        this.origin = origin;
        this.files = new TreeMap<>(files);
    }

    /** The rule base that ships with the program. */
    public static RuleFolder shipped() {
        Map<String, byte[]> files = new TreeMap<>();
        for (String name : new String(resource(INDEX), StandardCharsets.UTF_8).split("\\R")) {
            if (!name.isBlank()) {
                files.put(name.strip(), resource(name.strip()));
            }
        }
        return new RuleFolder("rules", files);
    }

    /** A rule base that somebody edits. */
    public static RuleFolder at(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(new Problem(
                    folder.toString(), 0, "", "is not a folder.", "name the folder that holds shared and the codes."));
        }
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(RuleFolder::belongs).toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), YamlFiles.bytes(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new RuleFolder(folder.toString(), files);
    }

    private static boolean belongs(Path path) {
        String name = path.toString();
        return Files.isRegularFile(path) && (name.endsWith(".yaml") || name.endsWith(".drl"));
    }

    private static byte[] resource(String name) {
        try (InputStream in = RuleFolder.class.getResourceAsStream(SHIPPED + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its rule file " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where the files come from, for messages. */
    public String origin() {
        return origin;
    }

    /** The bytes of every file by relative path, sorted. */
    public Map<String, byte[]> files() {
        return files;
    }

    /** Relative paths that begin and end as given, sorted. */
    public List<String> names(String start, String end) {
        return files.keySet().stream()
                .filter(n -> n.startsWith(start) && n.endsWith(end))
                .toList();
    }

    /** The text of a file. */
    public String text(String name) {
        return YamlFiles.text(origin + "/" + name, files.get(name));
    }

    /** The folders of this rule base: shared, the codes, and those that codes borrow. */
    public List<String> folders() {
        return files.keySet().stream()
                .filter(n -> n.indexOf('/') > 0)
                .map(n -> n.substring(0, n.indexOf('/')))
                .distinct()
                .toList();
    }

    /** Ids of the codes that can be chosen: the folders that hold a code.yaml. Others are there to be borrowed. */
    public List<String> codes() {
        return files.keySet().stream()
                .filter(n -> n.matches("[^/]+/code\\.yaml"))
                .map(n -> n.substring(0, n.indexOf('/')))
                .toList();
    }
}
