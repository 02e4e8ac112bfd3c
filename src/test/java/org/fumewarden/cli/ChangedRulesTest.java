package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Advice by rules that somebody changed is told apart from that of the program, on a sheet and beside the lines of a batch. */
final class ChangedRulesTest {
    private static final String BANNER = "NOT THE RULES OF THIS PROGRAM";
    private static final Path TASK = Path.of("scenarios/tours/stainless-brackets.yaml");

    @TempDir
    private Path folder;

    @Test
    void changedRulesAreNamedByAdviseAndBatch() throws IOException {
        Path rules = EditedRules.copy(folder);
        Path lines = Files.writeString(folder.resolve("tasks.jsonl"), "{}\n");
        assertFalse(batch(rules, lines).contains(BANNER), "a copy as it ships");
        Path limits = rules.resolve("gb/tables/limits.yaml");
        Files.writeString(
                limits,
                Files.readString(limits)
                        .replace("agent: nickel, unit: mg/m3, twa: 0.5", "agent: nickel, unit: mg/m3, twa: 0.4"));
        assertTrue(batch(rules, lines).contains(BANNER), "a limit was changed");
        assertTrue(
                CommandRun.of("advise", TASK.toString(), "--rules", rules.toString())
                        .out()
                        .contains(BANNER),
                "a limit was changed");
        for (String command : List.of(
                "exposure",
                "endurance",
                "explain --ask-first",
                "explain --why-not th2",
                "compare --change task.extraction=none")) {
            List<String> words = new ArrayList<>(List.of(command.split(" ")));
            words.addAll(List.of(TASK.toString(), "--rules", rules.toString()));
            CommandRun run = CommandRun.of(words.toArray(String[]::new));
            assertTrue(run.out().startsWith(BANNER), () -> command + ": " + run.out() + run.err());
        }
    }

    private static String batch(Path rules, Path lines) {
        return CommandRun.of("batch", lines.toString(), "--rules", rules.toString())
                .err();
    }
}
