package org.fumewarden.cli;

import java.util.concurrent.Callable;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.report.AdviceSchema;
import org.fumewarden.report.TaskSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a JSON Schema. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = "Prints the JSON Schema of task files or of advice.",
        footer = {"", "Example:", "  fumewarden schema task"})
final class SchemaCommand implements Callable<Integer> {
    /** What the schema describes. */
    enum Subject {
        task,
        advice
    }

    @Parameters(paramLabel = "task|advice", description = "${COMPLETION-CANDIDATES}")
    private Subject subject;

    @Option(
            names = "--code",
            paramLabel = "ID",
            description = "Code whose vocabulary the task schema lists; the first one when not given.")
    private String code;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String schema = subject == Subject.advice ? AdviceSchema.text() : TaskSchema.write(vocabulary());
        spec.commandLine().getOut().print(schema);
        spec.commandLine().getOut().flush();
        return ExitCodes.COMPLETE;
    }

    private Vocabulary vocabulary() {
        RuleFolder folder = RuleFolder.shipped();
        return CodeBook.read(folder, code == null ? folder.codes().get(0) : code)
                .vocabulary();
    }
}
