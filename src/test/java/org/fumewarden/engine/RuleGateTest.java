package org.fumewarden.engine;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A rule file concludes; it runs no other code, and is refused before it is compiled when it would. */
final class RuleGateTest {
    private static final String SOUND = """
            package rules.gb.need;

            import org.fumewarden.model.*;

            rule "GB-NEED-990 a rule of somebody"
            @source("practice") @clause("x") @confidence("practice") @says("x")
            when
              $a : Answer( question == "process", $process : value )
            then
              insert( Need.floor( "welding-fume", $process ) );
            end
            """;

    @TempDir
    Path folder;

    @Test
    void shippedRulesPassTheSameGate() {
        RuleFolder shipped = RuleFolder.shipped();
        List<String> files = shipped.names("", ".drl");
        assertTrue(files.size() > 20);
        assertDoesNotThrow(() -> RuleGate.admit(shipped, files));
    }

    static Stream<List<String>> attacks() {
        String then = "insert( Need.floor( \"welding-fume\", $process ) );";
        String when = "$a : Answer( question == \"process\", $process : value )";
        return Stream.of(
                List.of("import org.fumewarden.model.*;", "import org.fumewarden.model.*;\nimport java.io.File;"),
                List.of("import org.fumewarden.model.*;", "import function java.lang.System.exit;"),
                List.of("import org.fumewarden.model.*;", "import org.fumewarden.model.*;\nglobal java.util.List out;"),
                List.of(
                        "import org.fumewarden.model.*;",
                        "import org.fumewarden.model.*;\nfunction void f() { System.exit(9); }"),
                List.of("import org.fumewarden.model.*;", "import org.fumewarden.model.*;\ndeclare X a : int end"),
                List.of(then, "System.exit( 9 );"),
                List.of(then, "insert( new java.io.File( \"x\" ) );"),
                List.of(then, "insert( $a.getClass().getClassLoader() );"),
                List.of(then, "insert( Need.floor( \"x\", $process ) ); while ( true );"),
                List.of(then, "for ( ; ; ) insert( Need.floor( \"x\", $process ) );"),
                List.of(then, "Runtime.getRuntime().exec( \"x\" ); " + then),
                List.of(then, "insert( Need.floor( \"x\\u0022 + System.exit(9) + \\u0022\", $process ) );"),
                List.of(then, "update( $a );"),
                List.of(then, "drools.halt(); " + then),
                List.of(then, "insert( (Object) new Object() { { System.exit( 9 ); } } );"),
                List.of(when, "$a : Answer( question == System.getProperty( \"x\" ), $process : value )"),
                List.of(when, "$a : Answer( $process : value, this.getClass().forName( \"x\" ) != null )"),
                List.of(when, "$a : Answer( $process : value, class.classLoader != null )"),
                List.of(when, "$a : Answer( $process : value, eval( Runtime.getRuntime() != null ) )"),
                List.of(when, when + "\n  eval( System.currentTimeMillis() > 0 )"),
                List.of(when, when + "\n  java.io.File( )"),
                List.of(when, when + "\n  Answer( ) from new java.util.ArrayList()"),
                List.of(
                        when,
                        when
                                + "\n  List() from accumulate( Answer(), init( System.exit(9); ) action( ) result( null ) )"),
                List.of("when", "salience 10\nwhen"),
                List.of("when", "dialect \"mvel\"\nwhen"),
                List.of("GB-NEED-990 a rule of somebody", "GB-NEED-990 a \\\" + System.exit(9) + \\\""),
                List.of("package rules.gb.need;", "package java.lang;"));
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void codeBeyondTheLanguageIsRefusedWithFileAndLine(List<String> swap) throws IOException {
        assertTrue(SOUND.contains(swap.get(0)));
        RuleFolder rules = folder(SOUND.replace(swap.get(0), swap.get(1)));
        InputException refused =
                assertThrows(InputException.class, () -> RuleGate.admit(rules, List.of("gb/need.drl")), swap.get(1));
        assertTrue(refused.getMessage().contains("gb/need.drl"), refused.getMessage());
        refused.problems().forEach(p -> assertFalse(p.remedy().isBlank()));
    }

    @Test
    void theSoundOneIsLetIn() throws IOException {
        RuleFolder rules = folder(SOUND);
        assertDoesNotThrow(() -> RuleGate.admit(rules, List.of("gb/need.drl")));
    }

    private RuleFolder folder(String drl) throws IOException {
        Files.createDirectories(folder.resolve("gb"));
        Files.writeString(folder.resolve("gb/need.drl"), drl);
        return RuleFolder.at(folder);
    }

    @Test
    void aCommandGivenSuchAFolderRunsNothingOfIt() throws IOException, InterruptedException {
        Path rules = folder.resolve("rules");
        assertEquals(
                0,
                new ProcessBuilder("cp", "-r", "rules", rules.toString())
                        .start()
                        .waitFor());
        Path proof = folder.resolve("it-ran");
        Path drl = rules.resolve("gb/need.drl");
        Files.writeString(
                drl,
                Files.readString(drl)
                        + "\nrule \"GB-NEED-999 runs what it likes\"\nwhen\n  Answer()\nthen\n  new java.io.FileWriter( \""
                        + proof + "\" ).close();\nend\n");
        CommandRun run =
                CommandRun.of("advise", "scenarios/tours/stainless-brackets.yaml", "--rules", rules.toString());
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains("need.drl:") && run.err().contains("GB-NEED-999"), run.err());
        assertFalse(Files.exists(proof));
    }
}
