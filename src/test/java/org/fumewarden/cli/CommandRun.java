package org.fumewarden.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/**
 * One run of the command line.
 *
 * @param out what went to standard output
 * @param err what went to standard error
 */
public record CommandRun(int exit, String out, String err) {

    /** Runs the program in this process. */
    public static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine(arguments);
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        int exit = line.execute(arguments);
        return new CommandRun(exit, out.toString(), err.toString());
    }
}
