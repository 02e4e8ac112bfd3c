package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import picocli.CommandLine.Option;

/** Options of every command that reads a task: which rules, which code, which day. */
final class TaskOptions {
    @Option(
            names = "--code",
            paramLabel = "ID",
            description = "Code that decides, whatever the file says, such as gb or us.")
    private String code;

    @Option(names = "--on", paramLabel = "DATE", description = "Day whose rules hold, such as 2026-03-02.")
    private LocalDate on;

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules; compiled now.")
    private Path rules;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "Sets one value of the task, such as wearer.facial-hair=true.")
    private Map<String, String> changes = new LinkedHashMap<>();

    /** A task with the advisor of its code. */
    record Prepared(Task task, Advisor advisor) {}

    /** Reads a task file and prepares the advisor of its code. */
    Prepared prepare(Path file) {
        Located root = TaskTree.read(file);
        changes.forEach((path, value) -> TaskTree.set(root, path, value));
        String chosen = Optional.ofNullable(code)
                .or(() -> TaskTree.top(root, "code"))
                .orElseThrow(() -> new InputException(new Problem(
                        file.toString(), 0, "code", "is not given.", "add a line \"code: gb\", or give --code.")));
        RuleBase base = rules == null ? RuleBase.shipped(chosen) : RuleBase.compiled(RuleFolder.at(rules), chosen);
        Task task = new TaskReader(base.book().vocabulary()).read(root, chosen, Optional.ofNullable(on));
        return new Prepared(task, new Advisor(base));
    }
}
