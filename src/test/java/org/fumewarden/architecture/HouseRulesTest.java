package org.fumewarden.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules of the house that no compiler knows. */
final class HouseRulesTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final int WALL = 300;

    /** Help text may name a code as an example, and a language may be called like a code; nothing else may. */
    private static final Pattern EXAMPLE = Pattern.compile("fumewarden |such as |example|code: |LANGUAGES = ");

    @Test
    void noJavaNamesACode() throws IOException {
        List<String> codes;
        try (Stream<Path> folders = Files.list(Path.of("rules"))) {
            codes = folders.filter(f -> Files.exists(f.resolve("code.yaml")))
                    .map(f -> f.getFileName().toString())
                    .toList();
        }
        Pattern named = Pattern.compile("\"(" + String.join("|", codes) + ")\"");
        List<String> found = new ArrayList<>();
        for (Path file : javaFiles()) {
            List<String> lines = Files.readAllLines(file);
            for (int i = 0; i < lines.size(); i++) {
                if (named.matcher(lines.get(i)).find()
                        && !EXAMPLE.matcher(lines.get(i)).find()) {
                    found.add(file + ":" + (i + 1) + " " + lines.get(i).strip());
                }
            }
        }
        assertEquals("", String.join("\n", found), "adding a code must touch no Java");
    }

    @Test
    void noFileIsLongerThanTheWall() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : javaFiles()) {
            long lines = Files.readAllLines(file).size();
            if (lines > WALL) {
                found.add(file + " has " + lines + " lines");
            }
        }
        assertEquals("", String.join("\n", found), "at most " + WALL + " lines a file");
    }

    @Test
    void noNameLivesInTwoPackages() throws IOException {
        Map<String, List<Path>> homes = javaFiles().stream()
                .filter(f -> !f.endsWith("package-info.java"))
                .collect(Collectors.groupingBy(f -> f.getFileName().toString()));
        homes.values().removeIf(files -> files.size() == 1);
        assertEquals(Map.of(), homes, "a reader who meets a name knows what it means");
    }

    private static List<Path> javaFiles() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
    }
}
