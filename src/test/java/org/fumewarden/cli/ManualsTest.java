package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What the distribution carries for shell and manual comes from the commands, and names all of them. */
class ManualsTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws IOException {
        Manuals.write(folder);
    }

    @Test
    void theCompletionNamesEveryCommandAndEachOfItsOptions() throws IOException {
        String script = completion();
        for (CommandLine command : all(Main.commandLine()).toList()) {
            String function = "function _picocli_"
                    + command.getCommandSpec().qualifiedName("_").replace("-", "_") + "() {";
            assertTrue(script.contains(function), function);
            String body = script.substring(script.indexOf(function));
            body = body.substring(0, body.indexOf("\n}"));
            Set<String> words = Arrays.stream(body.split("[\\s'\"|)]+")).collect(Collectors.toSet());
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertTrue(words.containsAll(List.of(option.names())), function + option);
            }
            assertTrue(words.containsAll(command.getSubcommands().keySet()), function);
        }
    }

    @Test
    void bashReadsTheCompletionAndCompletesACommand() throws Exception {
        Process bash = new ProcessBuilder(
                        "bash",
                        "--norc",
                        "-c",
                        "set -e; bash -n \"$1\"; . \"$1\"; COMP_WORDS=(fumewarden ex); COMP_CWORD=1;"
                                + " _complete_fumewarden; echo \"${COMPREPLY[@]}\"",
                        "bash",
                        folder.resolve(Manuals.COMPLETION).toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(bash.getInputStream().readAllBytes()).strip();
        assertTrue(bash.waitFor(1, TimeUnit.MINUTES));
        assertEquals("exposure explain", said);
        assertEquals(0, bash.exitValue());
    }

    @Test
    void theCompletionIsTheSameOnEveryDay() throws IOException {
        assertFalse(completion().contains("Date:"));
    }

    @Test
    void everyCommandHasAPageWithItsOptionsAndItsExample() throws IOException {
        Set<String> expected = new TreeSet<>();
        for (CommandLine command : all(Main.commandLine()).toList()) {
            String name = command.getCommandSpec().qualifiedName("-") + ".adoc";
            expected.add(name);
            String page = Files.readString(folder.resolve(Manuals.PAGES).resolve(name));
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertTrue(page.contains("*" + option.longestName() + "*"), name + " " + option);
            }
            for (String line : command.getCommandSpec().usageMessage().footer()) {
                assertTrue(
                        !line.startsWith("  ") || page.replaceAll("\\s+", " ").contains(line.strip()),
                        name + " lacks: " + line);
            }
        }
        try (Stream<Path> pages = Files.list(folder.resolve(Manuals.PAGES))) {
            assertEquals(
                    expected,
                    pages.map(p -> p.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    private static String completion() throws IOException {
        return Files.readString(folder.resolve(Manuals.COMPLETION));
    }

    /** A command and everything below it. */
    static Stream<CommandLine> all(CommandLine line) {
        return Stream.concat(
                Stream.of(line),
                line.getSubcommands().values().stream().distinct().flatMap(ManualsTest::all));
    }
}
