package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is loaded ahead is a guess; these are what it is guessed from, and that a wrong one changes nothing. */
final class AheadTest {
    @TempDir
    private Path folder;

    private Optional<String> guess(String text, String... before) throws IOException {
        Path file = Files.writeString(folder.resolve("task.yaml"), text);
        List<String> arguments = new ArrayList<>(List.of(before));
        arguments.add(file.toString());
        return Ahead.guess(arguments);
    }

    @ParameterizedTest
    @CsvSource({
        "'title: Bay 4\ncode: gb\n', gb",
        "'{\n  \"code\": \"au-nz\",\n', au-nz",
        "'{\"title\": \"Bay 4\", \"code\": \"us\", \"task\": {}}', us",
        "'extends: other.yaml\n', ",
        "'', "
    })
    void theFileNamesItsCode(String text, String code) throws IOException {
        assertEquals(Optional.ofNullable(code), guess(text, "advise", "--format=json"));
    }

    @Test
    void anOptionGoesBeforeTheFile() throws IOException {
        assertEquals(Optional.of("us"), guess("code: gb\n", "advise", "--code=us"));
    }

    @Test
    void nothingIsGuessedForEditedRulesOrOtherCommandsOrNoFile() throws IOException {
        assertEquals(Optional.empty(), guess("code: gb\n", "advise", "--rules", "rules"));
        assertEquals(Optional.empty(), guess("code: gb\n", "rules"));
        assertEquals(
                Optional.empty(),
                Ahead.guess(List.of("advise", folder.resolve("absent.yaml").toString())));
        assertEquals(Optional.empty(), Ahead.guess(List.of("advise", folder.toString())));
        assertEquals(Optional.empty(), Ahead.guess(List.of("advise", "no\0path")));
        assertEquals(Optional.empty(), Ahead.guess(List.of()));
    }

    @Test
    void bytesThatAreNoTextAreLeftToTheCommand() throws IOException {
        Path file = Files.write(folder.resolve("task.yaml"), new byte[] {(byte) 0xff, (byte) 0xfe, 'x', '\n'});
        assertEquals(Optional.empty(), Ahead.guess(List.of("advise", file.toString())));
    }

    @ParameterizedTest
    @CsvSource({"gb", "us", "no-such-code"})
    void whateverWasGuessedTheRightRulesAreUsed(String guessed) {
        Ahead.start(List.of("advise", "--code=" + guessed));
        assertEquals("gb", RuleBase.shipped("gb").book().card().id());
        assertEquals("us", RuleBase.shipped("us").book().card().id());
    }
}
