package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.check.EditedRules;
import org.fumewarden.language.GermanLines;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What the commands print in German has no English word of the program in it. Common practice of plain language, no source. */
class GermanCommandsTest {
    private static final List<String> CODES = List.of("gb", "de", "us", "au");
    /** What the people of the register and of the tours typed. */
    private static final List<String> TYPED = List.of(
            "Tarn Haven Yard",
            "blower unit",
            "airline set",
            "full mask",
            "hose cut",
            "invented data sheet, line 3",
            "lens shade guide",
            "regs 33 to 43",
            "biological exposure indices of New Zealand",
            "A. Hygienist of the yard",
            "shielding gas with 2 percent carbon dioxide in a large hall",
            "Stainless brackets on a bench, no extraction");

    @TempDir
    Path folder;

    static List<Path> tours() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios/tours"))) {
            List<Path> tours = files.filter(f -> f.toString().endsWith(".yaml")).toList();
            return Extent.sample(tours, Path::toString, Extent.of(6, Extent.ALL, Extent.ALL));
        }
    }

    /** Citations keep the words of the law, and tables are read in the test of the sheet. The wrapped lines are joined: a sentence is judged as a whole. */
    @ParameterizedTest
    @MethodSource("tours")
    void enduranceIsGerman(Path tour) {
        for (String code : CODES) {
            CommandRun run = CommandRun.of("endurance", tour.toString(), "--code", code, "--language", "de");
            String body = run.out().substring(run.out().indexOf("=\n") + 2).replace("\n  ", " ");
            assertTrue(body.contains("Volumenstrom"), run.err());
            assertEquals("", GermanLines.faults(code + " " + tour.getFileName(), body, TYPED));
        }
    }

    /** What is in square brackets cites the law of a country; a path is what the user typed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "explain gouging --why required-factor",
                "explain stainless-brackets --why carbon-monoxide",
                "explain stainless-brackets --why-not ffp3",
                "explain ballast-tank --why-not th3",
                "explain us-stainless-tank-chromium --ask-first",
                "explain hardfacing --code us --ask-first",
                "explain hardfacing --code us --why-not papr-hood",
                "explain gouging --ask-first",
                "compare stainless-brackets --change task.extraction=verified",
                "compare painted-bridge --change task.place=confined-space",
                "compare us-painted-bridge-lead --change wearer.facial-hair=true",
                "compare stainless-brackets --codes gb,us,de",
                "compare hardfacing --codes us,au,nz",
                "sweep stainless-brackets --points 4 --vary exposures.manganese-respirable.twa=0.01..5mg/m3",
                "sweep stainless-brackets --points 2 --vary exposures.manganese-respirable.twa=0.01..0.02mg/m3"
            })
    void explainCompareAndSweepAreGerman(String typed) {
        List<String> words = new ArrayList<>(List.of(typed.split(" ")));
        words.set(1, "scenarios/tours/" + words.get(1) + ".yaml");
        words.addAll(List.of("--language", "de"));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        String body = run.out()
                .replaceAll("\\n {4,}(?! *- )", " ")
                .replaceAll("(Angabe|Tabelle) \\S+", "")
                .replaceAll("\\[[^\\]]*\\]", "")
                .replaceAll("(?s)Unterlagen:.*?\n\n", "")
                .replaceAll("\\(?[a-z]+(\\.[a-z-]+)+\\)?", "");
        assertTrue(body.contains("erteilt keine Arbeitsfreigabe"), run.err());
        assertEquals("", GermanLines.faults(typed, body, TYPED));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gb", "de", "us", "au", "nz"})
    void thePapersOfTheRegisterAreGerman(String code) {
        String store = folder.resolve(code + ".db").toString();
        for (List<String> words : List.of(
                List.of("register", "site", "id=YARD", "employer=Tarn Haven Yard", "address=1 Quay", "code=" + code),
                List.of(
                        "register",
                        "unit",
                        "id=U-014",
                        "description=blower unit",
                        "minimum-flow=160.5",
                        "air-delivery=powered",
                        "face-seal=loose",
                        "use-mode=routine",
                        "disposable=false"),
                List.of(
                        "register",
                        "unit",
                        "id=U-015",
                        "description=airline set",
                        "air-delivery=airline",
                        "face-seal=loose",
                        "use-mode=routine",
                        "disposable=false"),
                List.of("register", "mask", "id=M-1", "model=full mask", "face-seal=tight"),
                List.of("register", "wearer", "id=W-1", "name=Sanna Grey", "masks=M-1"),
                List.of("register", "plant", "id=P-1", "description=arm 1"),
                List.of("register", "air-supply", "id=A-1", "description=A", "air-source=compressor-fixed"),
                List.of(
                        "entry",
                        "examination",
                        "item=U-014",
                        "on=2026-03-02",
                        "by=Sanna Teller",
                        "result=passed",
                        "condition=sound",
                        "flow=171"),
                List.of(
                        "entry",
                        "fit-test",
                        "item=W-1",
                        "on=2026-03-03",
                        "by=X",
                        "result=passed",
                        "model=full mask",
                        "method=quantitative"),
                List.of(
                        "entry",
                        "before-use-check",
                        "item=U-014",
                        "on=2026-03-03",
                        "by=Sanna Teller",
                        "result=failed",
                        "remarks=hose cut",
                        "flow=150"))) {
            run(store, words);
        }
        List<List<String>> papers = new ArrayList<>(List.of(
                List.of("due", "--on", "2026-11-01"),
                List.of("calendar", "--on", "2026-11-01"),
                List.of("record", "U-014"),
                List.of("record", "U-014", "--sheet", "card"),
                List.of("record", "U-015", "--sheet", "card"),
                List.of("record", "W-1"),
                List.of("record", "P-1"),
                List.of("record", "A-1"),
                List.of(
                        "record",
                        "--sheet",
                        "programme",
                        "--on",
                        "2026-11-01",
                        "--task",
                        "scenarios/tours/stainless-brackets.yaml")));
        for (List<String> paper : papers) {
            List<String> words = new ArrayList<>(paper);
            words.addAll(List.of("--language", "de", "--code", code));
            String out = run(store, words)
                    .out()
                    .replace("\r\n ", "")
                    .replaceAll("(?m)^.*\\S {3,}\\S.*$", "")
                    .replaceAll("\n +", " ")
                    .replaceAll("\\[[^\\]]*\\]", "")
                    .replaceAll("(Regs 2016 )?(regs? )?[0-9, ]*(to|and) [0-9]*|of New Zealand.*?2026", "");
            assertTrue(out.length() > 100, paper.toString());
            assertEquals("", GermanLines.faults(code + " " + paper, out, TYPED));
        }
    }

    @Test
    void aLanguageThatNobodySpeaksIsRefusedInASentence() {
        CommandRun run = CommandRun.of("endurance", "scenarios/tours/gouging.yaml", "--language", "fr");
        assertEquals(ExitCodes.BAD_INPUT, run.exit());
        assertTrue(run.err().contains("Write en or de."), run.err());
    }

    private static CommandRun run(String store, List<String> words) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of("--store", store));
        return CommandRun.of(all.toArray(String[]::new));
    }

    /** Whatever a command says of itself has its German. */
    @Test
    void theHelpOfEachCommandIsGerman() {
        Speech speech = Speech.of(Words.in("de"), Map.of());
        List<String> missing = new ArrayList<>();
        helped(Main.commandLine(), missing, speech);
        assertEquals(List.of(), missing.stream().distinct().toList());
        String help = CommandRun.of("compare", "--help", "--language", "de").out();
        assertTrue(help.startsWith("Aufruf: fumewarden compare"), help);
        assertTrue(help.contains("Aufgabendatei, YAML oder JSON."), help);
    }

    private static void helped(CommandLine line, List<String> missing, Speech speech) {
        CommandSpec spec = line.getCommandSpec();
        Stream.of(
                        Stream.of(spec.usageMessage().description()),
                        Stream.of(spec.usageMessage().footer()),
                        spec.args().stream().flatMap(a -> Stream.of(a.description())))
                .flatMap(lines -> lines)
                .filter(says -> says.endsWith(".") || says.endsWith(":"))
                .filter(says -> speech.quoting(says).equals(says))
                .forEach(missing::add);
        spec.usageMessage().exitCodeList().values().stream()
                .filter(says -> speech.quoting(says).equals(says))
                .forEach(missing::add);
        line.getSubcommands().values().forEach(command -> helped(command, missing, speech));
    }

    /** A task that the program reads is not to blame for rules that ask by another name. */
    @Test
    void aPathThatChangedRulesLostIsAFaultOfTheRules() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, "shared/tables/questions.yaml", "path: task.base-metal,", "path: task.base-metals,");
        CommandRun run = CommandRun.of("advise", "scenarios/tours/gouging.yaml", "--rules", rules.toString());
        assertTrue(run.err().startsWith(rules + " task.base-metal is a name of the program"), run.err());
    }
}
