package org.fumewarden.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Status;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.batch.Outcome;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/** The index of decisions and the list of the public API are what they say. */
final class PapersTest {
    private static final Path DECISIONS = Path.of("docs/decisions");
    private static final Path API = Path.of("docs/api.txt");
    private static final Pattern HEAD = Pattern.compile(
            "# (.+)\n\nNumber: (\\d+)  \nDate: (\\d{4}-\\d{2}-\\d{2})  \nStatus: (holds|replaced by \\d+)\n\n[\\s\\S]+");
    private static final List<Class<?>> PUBLIC = List.of(
            Advisor.class,
            Advice.class,
            Status.class,
            RuleBase.class,
            Task.class,
            TaskReader.class,
            TaskTree.class,
            AdviceJson.class,
            LineAdvisor.class,
            Outcome.class,
            InputException.class,
            Problem.class);

    @Test
    void everyDecisionHasItsThreeLinesAndStandsInTheIndex() throws IOException {
        TreeMap<Integer, String> lines = new TreeMap<>();
        List<Path> pages;
        try (Stream<Path> files = Files.list(DECISIONS)) {
            pages = files.filter(f -> f.toString().endsWith(".md") && !f.endsWith("README.md"))
                    .toList();
        }
        for (Path page : pages) {
            Matcher head = HEAD.matcher(Files.readString(page));
            assertEquals(true, head.matches(), page + " begins with title, number, date and status");
            String line = "| %s | [%s](%s) | %s | %s |"
                    .formatted(head.group(2), head.group(1), page.getFileName(), head.group(3), head.group(4));
            assertEquals(
                    null, lines.put(Integer.valueOf(head.group(2)), line), page + " has the number of another page");
        }
        List<String> index = Files.readAllLines(DECISIONS.resolve("README.md")).stream()
                .filter(l -> l.matches("\\| \\d+ .*"))
                .toList();
        assertEquals(List.copyOf(lines.values()), index);
    }

    /** What is taken out of the list or changed in it breaks a program that uses it: see DEVELOPERS.md on releases. */
    @Test
    void thePublicApiIsAsListed() throws IOException {
        String now = PUBLIC.stream().map(PapersTest::listed).collect(Collectors.joining("\n"));
        Path found = Files.writeString(Path.of("target/api.txt"), now);
        assertEquals(Files.readString(API), now, "if it is meant, tell it in docs/changes.md and copy " + found);
    }

    private static String listed(Class<?> type) {
        TreeSet<String> lines = new TreeSet<>();
        List<Executable> all = new ArrayList<>(Arrays.asList(type.getMethods()));
        all.addAll(Arrays.asList(type.getDeclaredConstructors()));
        all.stream()
                .filter(e -> Modifier.isPublic(e.getModifiers()) && !e.isSynthetic())
                .filter(e -> e.getDeclaringClass().getName().startsWith("org.fumewarden."))
                .map(e -> "    "
                        + e.toGenericString()
                                .replaceAll("(public|static|final|default) ", "")
                                .replaceAll("\\b[a-z]+\\.(?=[\\w.$])", "")
                                .replace(
                                        " " + e.getDeclaringClass().getSimpleName() + ".",
                                        " " + type.getSimpleName() + "."))
                .forEach(lines::add);
        return type.getName() + "\n" + String.join("\n", lines) + "\n";
    }
}
