package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.report.CodesText;
import org.fumewarden.report.MovedText;
import org.fumewarden.report.WhatIfText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what moves when one thing changes. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Compares a task with and without changes, or under several codes, and shows what differs and why.",
        footer = {
            "",
            "Example:",
            "  fumewarden compare scenarios/tours/stainless-brackets.yaml \\",
            "    --change task.extraction=verified"
        })
final class CompareCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON.")
    private Path file;

    @Option(names = "--change", paramLabel = "PATH=VALUE", description = "One change to the task. It may be repeated.")
    private Map<String, String> changes = new LinkedHashMap<>();

    @Option(
            names = "--codes",
            paramLabel = "A,B",
            split = ",",
            description = "Two or more codes to compare side by side.")
    private List<String> codes = List.of();

    @Mixin
    private TaskOptions options;

    @Mixin
    private LanguageOption language;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Bench plain = options.bench(file);
        Bench bench = language.speaking(plain);
        WhatIfText text = new WhatIfText(language.speech(plain));
        PrintWriter out = spec.commandLine().getOut();
        CodeBook[] books = Stream.concat(Stream.of(bench.code()), codes.stream().map(String::strip))
                .distinct()
                .map(code -> bench.advisor(code).base().book())
                .toArray(CodeBook[]::new);
        List<Advice> compared = new ArrayList<>();
        out.print(options.banner(language.words(), books));
        Map<String, Map<String, String>> variants = new LinkedHashMap<>();
        UnaryOperator<String> agents = bench.book().vocabulary()::name;
        if (codes.size() > 1) {
            List<CodesText.Side> sides = codes.stream()
                    .map(String::strip)
                    .distinct()
                    .map(c -> side(bench, c))
                    .toList();
            out.print(CodesText.write(sides, agents, text));
            sides.forEach(s -> compared.add(s.advice()));
        } else if (!codes.isEmpty()) {
            throw new InputException(
                    new Problem("--codes", 0, "", "names one code alone.", "name two or more, such as gb,us."));
        } else if (!changes.isEmpty()) {
            variants.put(
                    String.join(
                            ", ",
                            changes.entrySet().stream().map(Object::toString).toList()),
                    changes);
        } else {
            variants.putAll(bench.variants());
            if (variants.isEmpty()) {
                throw new InputException(new Problem(
                        file.toString(),
                        0,
                        "",
                        "holds no change of its own, and none was given.",
                        "add --change task.extraction=verified, or --codes with two codes."));
            }
        }
        Advice before = bench.advise();
        variants.forEach((name, change) -> {
            Advice after = bench.advise(change);
            out.println(text.say("Changed: {0}", name));
            out.println();
            out.print(MovedText.write(before, after, agents, text));
            out.println();
            compared.addAll(List.of(before, after));
        });
        out.print(text.closing(compared.toArray(Advice[]::new)));
        out.flush();
        return ExitCodes.COMPLETE;
    }

    private CodesText.Side side(Bench bench, String code) {
        Advice advice = bench.advise(code, changes);
        return new CodesText.Side(
                advice,
                bench.advisor(code).base().rowsOn(advice.on()).stream()
                        .filter(DeviceClass.class::isInstance)
                        .map(DeviceClass.class::cast)
                        .toList());
    }
}
