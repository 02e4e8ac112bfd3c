package org.fumewarden.codes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.yaml.snakeyaml.nodes.Node;

/**
 * The rule base inside the program: its files as text, and beside them what the build worked out so that a start need
 * not: the parsed tables of each folder and the revision of each code.
 */
public final class ShippedRuleBase {
    private static final String PLACE = "/rulebase/";
    private static final String INDEX = "index.txt";
    private static final String PARSED = "/parsed.bin";
    private static final String REVISIONS = "revisions.txt";

    private ShippedRuleBase() {}

    /**
     * Works out, at build, what a start need not.
     *
     * @param arguments the folder in which the files of the rule base are staged
     */
    public static void main(String[] arguments) throws IOException {
        Path staged = Path.of(arguments[0]);
        RuleFolder folder = RuleFolder.at(staged);
        for (String part : folder.folders()) {
            Map<String, Node> parsed = new LinkedHashMap<>();
            folder.names(part + "/", ".yaml").stream()
                    .filter(name -> !Tongue.holds(name))
                    .forEach(name -> parsed.put(
                            name, YamlFiles.parse(name, folder.text(name)).node()));
            Files.write(staged.resolve(part + PARSED), NodeFile.write(parsed));
        }
        StringBuilder revisions = new StringBuilder();
        for (String code : folder.codes()) {
            List<String> parts = CodeBook.folders(folder, code);
            revisions
                    .append(key(parts))
                    .append(' ')
                    .append(Revision.of(folder.files(), parts))
                    .append('\n');
        }
        Files.writeString(staged.resolve(REVISIONS), revisions.toString());
    }

    private static String key(List<String> parts) {
        return String.join("+", new TreeSet<>(parts));
    }

    /** Relative paths of the files, sorted. */
    static List<String> names() {
        return new String(resource(INDEX), StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .sorted()
                .toList();
    }

    static byte[] bytes(String name) {
        return resource(name);
    }

    /** The parsed YAML files of a folder by relative path. */
    static Map<String, Node> parsed(String part) {
        return NodeFile.read(resource(part + PARSED));
    }

    /** The revision of folders that make up a code. */
    static Optional<String> revision(List<String> parts) {
        Map<String, String> known = new TreeMap<>();
        new String(resource(REVISIONS), StandardCharsets.UTF_8).lines().forEach(line -> {
            int space = line.indexOf(' ');
            known.put(line.substring(0, space), line.substring(space + 1));
        });
        return Optional.ofNullable(known.get(key(parts)));
    }

    private static byte[] resource(String name) {
        return ProgramFile.bytes(ShippedRuleBase.class, PLACE + name);
    }
}
