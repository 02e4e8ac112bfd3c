package org.fumewarden.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Writes the completion of the shell and the sources of the man pages from the commands themselves, for the
 * distribution. It lives beside the tests because the generator is no part of the program.
 */
public final class Manuals {
    /** Loaded by bash as it stands, and by zsh after {@code bashcompinit}, which the script itself turns on. */
    static final String COMPLETION = "completion/fumewarden";

    static final String PAGES = "adoc";

    private Manuals() {}

    /** Takes the folder to write into. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]));
    }

    /** Writes {@link #COMPLETION} and one page a command below {@link #PAGES}. */
    static void write(Path folder) throws IOException {
        CommandLine line = Main.commandLine();
        Path completion = folder.resolve(COMPLETION);
        Files.createDirectories(completion.getParent());
        // The generator dates its script; a release must come out the same on every day.
        String script = AutoComplete.bash("fumewarden", line).replaceAll("(?m)^# Date: .*\\R", "");
        Files.writeString(completion, script);
        examplesAsSection(line.getCommandSpec());
        int exit = ManPageGenerator.generateManPage(
                Files.createDirectories(folder.resolve(PAGES)).toFile(),
                null,
                new boolean[0],
                true,
                line.getCommandSpec());
        if (exit != 0) {
            throw new IOException("the man pages were not written; the generator ended with " + exit);
        }
    }

    /** The help ends with its example; the generator keeps only a footer that has a heading. */
    private static void examplesAsSection(CommandSpec spec) {
        String[] example = spec.usageMessage().footer();
        if (example.length > 0) {
            List<String> block = new ArrayList<>(List.of("----"));
            Arrays.stream(example)
                    .filter(line -> line.startsWith("  "))
                    .map(String::strip)
                    .forEach(block::add);
            block.add("----");
            spec.usageMessage().footerHeading("Examples%n").footer(block.toArray(String[]::new));
        }
        spec.usageMessage().exitCodeListHeading("Exit status%n");
        spec.subcommands().values().stream().distinct().forEach(command -> examplesAsSection(command.getCommandSpec()));
    }
}
