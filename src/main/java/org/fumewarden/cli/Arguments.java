package org.fumewarden.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.fumewarden.codes.Located;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;

/** What is wrong with the arguments of a command, in words. */
final class Arguments {
    private Arguments() {}

    static String told(ParameterException fault) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        if (fault instanceof MissingParameterException lacks
                && lacks.getMissing().size() == 1
                && lacks.getMissing().get(0).isPositional()
                && String.join(" ", lacks.getMissing().get(0).description()).startsWith("Task file")) {
            return "Please give a task file.";
        }
        if (fault instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            boolean either = missing.getMissing().stream()
                    .allMatch(a -> a.group() != null && a.group().exclusive());
            return command + " needs " + (either ? "one of " : "")
                    + missing.getMissing().stream()
                            .map(Arguments::name)
                            .collect(Collectors.joining(either ? ", " : " and "))
                    + ".";
        }
        if (fault instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
            return option.longestName() + " is given more than once. Keep one.";
        }
        if (fault.getArgSpec() != null && fault.getValue() != null) {
            return (fault.getArgSpec() instanceof OptionSpec option
                            ? option.longestName()
                            : fault.getArgSpec().paramLabel())
                    + " cannot be \"" + Located.shown(fault.getValue()) + "\". "
                    + remedy(fault.getArgSpec(), fault.getValue());
        }
        return fault.getMessage().replaceAll(" to class \\S+.*| \\(\\S*Exception.*", "");
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? option.longestName() + (option.arity().max() == 0 ? "" : " " + option.paramLabel())
                : argument.paramLabel();
    }

    private static String remedy(ArgSpec argument, String given) {
        Object[] choices = argument.type().getEnumConstants();
        if (choices != null) {
            return "Write "
                    + Arrays.stream(choices)
                            .map(Object::toString)
                            .collect(Collectors.joining(", "))
                            .replaceFirst(", (?=[^,]*$)", " or ")
                    + ".";
        }
        if (argument.type() == LocalDate.class) {
            return Located.noSuchDay(given).orElse("Write year-month-day, such as 2026-03-02.");
        }
        return Number.class.isAssignableFrom(argument.type()) || argument.type().isPrimitive()
                ? "Write a number with digits alone."
                : "Write it as in the help: " + argument.paramLabel() + ".";
    }
}
