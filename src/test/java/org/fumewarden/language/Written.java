package org.fumewarden.language;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.yaml.snakeyaml.Yaml;

/** Collects what people read from where it is written. */
final class Written {
    private static final Path RULES = Path.of("rules");
    private static final Pattern SAYS = Pattern.compile("@says\\(\"((?:[^\"\\\\]|\\\\.)*)\"\\)");
    private static final Pattern LITERAL =
            Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"(?:\\s*\\+\\s*\"((?:[^\"\\\\]|\\\\.)*)\")*");
    /** A statement to the database, or a command to type. */
    private static final Pattern CODE =
            Pattern.compile("^\\s*fumewarden |--\\w+ FILE|\\b(SELECT|CREATE|INSERT|serves)\\b");

    private static final Set<String> READ = Set.of("name", "ask", "says", "do", "title");

    /** A key of a message for the rules of the United States. */
    private static final Pattern AMERICAN = Pattern.compile("^[\\w.-]+\\.(us|part84)=");

    private static final Pattern READ_BY_USERS =
            Pattern.compile("README|docs/(glossary|gaps|dependencies|scale|how-to-.*)\\.md");

    private Written() {}

    /** Sentences of rules. */
    static List<Sentence> rules() {
        return files(RULES, ".drl").stream()
                .flatMap(f -> SAYS.matcher(text(f)).results().map(m -> new Sentence(f.toString(), kind(f), m.group(1))))
                .toList();
    }

    /** Sentences of rules in German. */
    static List<Sentence> german() {
        return files(RULES, "says_de.yaml").stream()
                .flatMap(f -> texts(new Yaml().load(text(f)), Set.of(), "german", f.toString()).stream())
                .toList();
    }

    /** Names, questions, duties, acts and cards of the tables. */
    static List<Sentence> tables() {
        return files(RULES, ".yaml").stream()
                .filter(f -> f.toString().contains("tables"))
                .flatMap(f -> texts(new Yaml().load(text(f)), READ, kind(f), f.toString()).stream())
                .toList();
    }

    /** Literals of the program that are sentences; patterns and code are not. */
    static List<Sentence> literals() {
        List<Sentence> found = new ArrayList<>();
        for (Path file : files(Path.of("src/main/java"), ".java")) {
            for (String line : text(file).split("\n")) {
                String code = line.strip();
                if (!code.startsWith("*") && !code.startsWith("//") && !code.startsWith("/*")) {
                    Matcher literal = LITERAL.matcher(line);
                    while (literal.find()) {
                        if (literal.group(1).strip().indexOf(' ') > 0
                                && !CODE.matcher(literal.group(1)).find()) {
                            found.add(new Sentence(file.getFileName().toString(), "literal", literal.group(1)));
                        }
                    }
                }
            }
        }
        return found;
    }

    /** Messages of the program in a language, but for those of the page. */
    static List<Sentence> messages(String file, String kind) {
        return text(Path.of("src/main/resources/org/fumewarden", file))
                .lines()
                .filter(l -> l.indexOf('=') > 0 && !l.startsWith("#"))
                .map(l -> new Sentence(
                        l.substring(0, l.indexOf('=')),
                        AMERICAN.matcher(l).find() && kind.equals("english") ? "us" : kind,
                        l.substring(l.indexOf('=') + 1)))
                .toList();
    }

    /** Lines of the documents that people read, without code; the page of rules and the log of changes are made from others. */
    static List<Sentence> documents() {
        return Stream.concat(Stream.of(Path.of("README.md")), files(Path.of("docs"), ".md").stream())
                .filter(f -> READ_BY_USERS.matcher(f.toString()).find())
                .flatMap(f -> text(f).lines()
                        .filter(l -> !l.startsWith("    "))
                        .map(l -> new Sentence(f.toString(), "english", l.replaceAll("`[^`]*`", ""))))
                .toList();
    }

    private static List<Sentence> texts(Object node, Set<String> keys, String kind, String where) {
        List<Sentence> found = new ArrayList<>();
        if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                boolean read = keys.isEmpty() || keys.contains(key.toString());
                if (value instanceof String text && read) {
                    found.add(new Sentence(where + " " + key, kind, text));
                } else if (!(value instanceof String)) {
                    found.addAll(texts(value, keys, kind, where));
                }
            });
        } else if (node instanceof List<?> list) {
            list.forEach(item -> found.addAll(texts(item, keys, kind, where)));
        }
        return found;
    }

    private static String kind(Path file) {
        return file.startsWith(RULES.resolve("us")) ? "us" : "english";
    }

    /** So many of the tours in the gate, all of them in larger runs. */
    static List<Path> tours(int gate) {
        return Extent.sample(
                files(Path.of("scenarios/tours"), ".yaml"), Path::toString, Extent.of(gate, Extent.ALL, Extent.ALL));
    }

    static List<Path> files(Path root, String end) {
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(f -> f.toString().endsWith(end)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
