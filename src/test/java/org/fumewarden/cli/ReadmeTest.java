package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** What the README shows is what the program prints. */
class ReadmeTest {
    @Test
    void theFirstCommandPrintsTheHeadThatIsShown() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        Matcher command = Pattern.compile("exec\\.args=\"(advise [^\"]+)\"").matcher(readme);
        assertTrue(command.find(), "the README shows no advise command");
        StringWriter out = new StringWriter();
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(out, true));
        assertEquals(0, line.execute(command.group(1).split(" ")));
        String shown = readme.substring(readme.indexOf("## What it prints"), readme.indexOf("## A task file"));
        List<String> lines = shown.lines()
                .filter(l -> l.startsWith("    "))
                .map(l -> l.substring(4))
                .toList();
        assertTrue(lines.size() > 5, "the README shows no output");
        lines.forEach(l -> assertTrue(
                out.toString().contains(l),
                "README.md shows a line that is not printed any more; copy the sheet anew: " + l));
    }

    @Test
    void everyCommandOfTheTableExists() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String table = readme.substring(readme.indexOf("| command |"), readme.indexOf("Exit codes: 0"));
        CommandLine line = Main.commandLine();
        Matcher names = Pattern.compile("`([a-z]+)")
                .matcher(table.lines()
                        .filter(l -> l.startsWith("|"))
                        .skip(2)
                        .map(l -> l.split("\\|")[1])
                        .reduce("", (a, b) -> a + "\n" + b));
        int found = 0;
        while (names.find()) {
            assertTrue(line.getSubcommands().containsKey(names.group(1)), names.group(1));
            found++;
        }
        assertEquals(Set.copyOf(line.getSubcommands().values()).size(), found, "the table names every command");
    }
}
