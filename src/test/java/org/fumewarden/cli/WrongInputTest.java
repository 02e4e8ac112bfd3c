package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A wrong file gets exit 2, the line, the field, what was found and what would do; never a stack trace. */
final class WrongInputTest {
    private static final String GOOD = """
            title: A bench in the bracket shop of Tarn Haven
            code: gb
            on: 2026-03-02
            task:
              process: mag-solid-wire
              base-metal: mild-steel
              place: indoors
              wear-time: PT2H
            atmosphere:
              oxygen: 20.9 %
            exposures:
              - agent: manganese-respirable
                twa: 0.12 mg/m3
            wearer:
              facial-hair: false
            """;

    @TempDir
    private Path folder;

    @Test
    void theFileThatTheOthersSpoilIsGood() throws IOException {
        CommandRun run = advise(GOOD);
        assertEquals(3, run.exit(), run.err());
        assertEquals("", run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "process:|proces:|5|task.proces|is not a name used here.|\"process\"",
                "exposures:|exposure:|11|exposure |is not a name used here.|\"exposures\"",
                "mag-solid-wire|mag-solid-wires|5|task.process|mag-solid-wires|\"mag-solid-wire\"",
                "manganese-respirable|manganese-respirabel|12|agent|manganese-respirabel|\"manganese-respirable\"",
                "0.12 mg/m3|0.12 mg/l|13|twa|mg/l|mg/m3",
                "0.12 mg/m3|0.12|13|twa|has no unit|mg/m3",
                "0.12 mg/m3|-0.12 mg/m3|13|twa|negative|check the reading",
                "0.12 mg/m3|lots|13|twa|lots|mg/m3",
                "0.12 mg/m3|1e99999 mg/m3|13|twa|1e99999|number",
                "0.12 mg/m3|0.12 ppm|13|twa|ppm|mg/m3",
                "0.12 mg/m3||13|twa|empty|unknown",
                "twa:|tva:|13|tva|is not a name used here.|\"twa\"",
                "20.9 %|20.9|10|atmosphere.oxygen|no unit|%",
                "20.9 %|209 %|10|atmosphere.oxygen|above 100|check the number",
                "20.9 %|-1 %|10|atmosphere.oxygen|negative|check the reading",
                "PT2H|2 fortnights|8|task.wear-time|fortnights|min, h, s",
                "PT2H|PT2X|8|task.wear-time|PT2X|PT4H",
                "facial-hair: false|facial-hair: perhaps|15|wearer.facial-hair|perhaps|true",
                "facial-hair: false|facial-hair: [true]|15|wearer.facial-hair|a list|unknown",
                "facial-hair: false|facial-hair: {a: b}|15|wearer.facial-hair|a set of names|unknown",
                "facial-hair: false|facial-hair: false<br>  facial-hair: true|16|wearer.facial-hair|twice|keep one",
                "on: 2026-03-02|on: tomorrow|3|on|tomorrow|2026-03-02",
                "on: 2026-03-02|on: 2026-02-30|3|on|2026-02-30|February 2026 has no day 30",
                "on: 2026-03-02|on: 9999-12-31|3|on|is 9999-12-31, a day of which no table can speak|between 1900-01-01 and 9999-12-30",
                "on: 2026-03-02|on: 0001-01-01|3|on|is 0001-01-01, a day of which no table can speak|between 1900-01-01 and 9999-12-30",
                "on: 2026-03-02|on: 1899-12-31|3|on|is 1899-12-31, a day of which no table can speak|between 1900-01-01 and 9999-12-30",
                "on: 2026-03-02<br>||1||lacks \"on\"|on: 2026-03-02",
                "code: gb|code: atlantis|0|code|atlantis|gb",
                "oxygen: 20.9 %|<tab>oxygen: 20.9 %|10||is indented by a tab|Use spaces",
                "wearer:<br>  facial-hair: false|wearer: yes|14|wearer|single value|indent",
            })
    void aSpoiltLineIsNamed(String find, String replacement, int line, String field, String found, String maybe)
            throws IOException {
        assertTrue(GOOD.contains(unfolded(find)), find);
        String text = GOOD.replace(unfolded(find), replacement == null ? "" : unfolded(replacement));
        CommandRun run = advise(text);
        assertWrong(run);
        assertAll(
                () -> assertTrue(line == 0 || run.err().contains("task.yaml:" + line + " "), run.err()),
                () -> assertTrue(field == null || run.err().contains(field), run.err()),
                () -> assertTrue(run.err().contains(found), run.err()),
                () -> assertTrue(StringUtils.containsIgnoreCase(maybe(run), maybe), run.err()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   \n\n",
                "# only a comment\n",
                "just words",
                "- a\n- b\n",
                "title: [unclosed",
                "title: \"unclosed",
                "{\"title\": \"a\", }}",
                "a: b: c",
                "%YAML 9.9\n---\ntitle: x",
                "title: a\n---\ntitle: b\n",
                "!!java.lang.Runtime {}",
                "title: !!javax.script.ScriptEngineManager [x]",
                "42",
                "null",
                "exposures: high\ncode: gb\non: 2026-03-02",
                "exposures: [manganese-respirable]\ncode: gb\non: 2026-03-02",
                "exposures: [{twa: 1 mg/m3}]\ncode: gb\non: 2026-03-02",
                "exposures: [{agent: ozone, samples: []}]\ncode: gb\non: 2026-03-02",
                "exposures: [{agent: ozone, samples: [1 ppm, 2 mg/m3]}]\ncode: gb\non: 2026-03-02",
                "exposures: [{agent: ozone, judged: below-limit, by: A, basis: hearsay, on: 2026-03-01}]\ncode: gb\non: 2026-03-02",
                "exposures: [{agent: ozone, twa: 1 ppm}, {agent: ozone, twa: 2 ppm}]\ncode: gb\non: 2026-03-02",
                "task: [process]\ncode: gb\non: 2026-03-02",
                "? {a: b}\n: c\ncode: gb\non: 2026-03-02",
                "extends: nothing.yaml",
                "extends: task.yaml",
                "code: {a: b}\non: 2026-03-02",
                "code: ''\non: 2026-03-02",
                "code: ../gb\non: 2026-03-02",
                "title: x\non: 2026-03-02",
            })
    void aFileThatIsNoTaskIsRefused(String text) throws IOException {
        assertWrong(advise(text));
    }

    @Test
    void deepNestingIsRefused() throws IOException {
        assertWrong(advise("a: " + "[".repeat(5000) + "]".repeat(5000)));
        assertWrong(advise("{\"a\":".repeat(5000) + "1" + "}".repeat(5000)));
    }

    @Test
    void aliasesThatMultiplyAreRefused() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(9)).append("x]\n");
        }
        assertWrong(advise(bomb.toString()));
    }

    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(50_000_000);
        }
        CommandRun run = CommandRun.of("advise", file.toString());
        assertWrong(run);
        assertTrue(run.err().contains("50000000"), run.err());
    }

    @Test
    void aFolderAndAMissingFileAreRefused() {
        CommandRun directory = CommandRun.of("advise", folder.toString());
        assertWrong(directory);
        assertTrue(directory.err().contains("is a folder"), directory.err());
        CommandRun missing = CommandRun.of("advise", folder.resolve("none.yaml").toString());
        assertWrong(missing);
        assertTrue(missing.err().contains("does not exist"), missing.err());
    }

    @Test
    void aFileThatExtendsNoneIsNamedWithItsLineAndACutJsonAsJson() throws IOException {
        Path file = Files.writeString(folder.resolve("own.yaml"), "title: t\nextends: none.yaml\n");
        CommandRun run = CommandRun.of("advise", file.toString());
        assertWrong(run);
        assertTrue(run.err().contains("own.yaml:2 extends names a file that is not there: "), run.err());
        Path under = Files.writeString(folder.resolve("code.yaml"), "title: t\ncode: fr\n");
        assertTrue(CommandRun.of("advise", under.toString())
                .err()
                .contains("code.yaml:2 code is not a code of these rules: \"fr\"."));
        Path apart = Files.writeString(
                folder.resolve("apart.yaml"), "extends: code.yaml\ncode: gb\nwearer: {facial-hiar: true}\n");
        String slip = CommandRun.of("advise", apart.toString()).err();
        assertTrue(slip.contains("apart.yaml:3 wearer.facial-hiar is not a name used here."), slip);
        Path cut = Files.writeString(folder.resolve("cut.json"), "{\"title\": \"t\",");
        assertTrue(CommandRun.of("advise", cut.toString()).err().contains("cut.json:1 is not JSON"));
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        Path file = folder.resolve("binary.yaml");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1, 2, (byte) 0x80});
        assertWrong(CommandRun.of("advise", file.toString()));
        Files.write(file, new byte[] {0, 0, 0, 0});
        assertWrong(CommandRun.of("advise", file.toString()));
    }

    @Test
    void controlCharactersDoNotReachTheConsole() throws IOException {
        CommandRun run = advise(GOOD.replace("mag-solid-wire", "\"mag\\e[31m\\nsolid\""));
        assertWrong(run);
        assertFalse(run.err().contains("\u001b"), "an escape sequence was printed");
    }

    @Test
    void wrongOptionsAreRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("task.yaml"), GOOD);
        for (String[] options : new String[][] {
            {"--on", "yesterday"},
            {"--code", "atlantis"},
            {"--rules", folder.resolve("none").toString()},
            {"--format", "pdf"},
            {"--set", "task.procces=tig"},
            {"--set", "exposures.9.twa=1 mg/m3"},
            {"--no-such-option"},
        }) {
            String[] arguments = new String[options.length + 2];
            arguments[0] = "advise";
            arguments[1] = file.toString();
            System.arraycopy(options, 0, arguments, 2, options.length);
            CommandRun run = CommandRun.of(arguments);
            assertEquals(2, run.exit(), String.join(" ", options) + run.err());
            assertNoTrace(run);
        }
    }

    @Test
    void jsonIsAcceptedWithTabsToo() throws IOException {
        String json = """
                {
                \t"title": "A bench", "code": "gb", "on": "2026-03-02",
                \t"task": {"process": "tig", "place": "unknown"},
                \t"exposures": [{"agent": "ozone", "stel": "0.08 ppm"}]
                }
                """;
        CommandRun run = advise(json);
        assertEquals(3, run.exit(), run.err());
        assertEquals("", run.err());
    }

    @Test
    void unknownIsAcceptedEverywhere() throws IOException {
        String text = GOOD.replaceAll("(process|base-metal|place|wear-time|oxygen|twa|facial-hair): .*", "$1: unknown");
        CommandRun run = advise(text);
        assertEquals(3, run.exit(), run.err());
        assertEquals("", run.err());
    }

    private CommandRun advise(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("task.yaml"), text);
        return CommandRun.of("advise", file.toString());
    }

    private static String unfolded(String text) {
        return text.replace("<br>", "\n").replace("<tab>", "\t");
    }

    private static void assertWrong(CommandRun run) {
        assertAll(
                () -> assertEquals(2, run.exit(), run.out() + run.err()),
                () -> assertEquals("", run.out()),
                () -> assertFalse(maybe(run).isEmpty(), "no remedy: " + run.err()),
                () -> assertTrue(
                        run.err().length() < 20_000, "message of " + run.err().length()));
        assertNoTrace(run);
    }

    private static String maybe(CommandRun run) {
        return run.err().lines().skip(1).reduce("", (a, b) -> a + b + "\n");
    }

    private static void assertNoTrace(CommandRun run) {
        assertFalse(run.err().contains("\tat "), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }
}
