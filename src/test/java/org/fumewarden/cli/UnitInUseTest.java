package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A unit that the register holds as withdrawn is not for use; its class may be. */
class UnitInUseTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";

    @TempDir
    private Path folder;

    private String store;
    private String out;
    private String err;

    @BeforeEach
    void registerAUnit() {
        store = folder.resolve("yard.db").toString();
        assertEquals(
                0,
                run(
                        "register",
                        "unit",
                        "id=TH-07",
                        "description=blower with hood",
                        "minimum-flow=170",
                        "--store",
                        store),
                () -> err);
    }

    @Test
    void aUnitThatTheLogKnowsLittleOfIsAskedAbout() {
        advise("TH-07");
        assertTrue(out.contains("WEAR        ! Unit TH-07: DO NOT USE IT."), out);
        assertTrue(out.contains("            Powered hood"), out);
    }

    @Test
    void aWithdrawnUnitIsNotForUseAndItsClassStays() {
        int logged = run("log", "withdrawal", "item=TH-07", "by=Sanna Teller", "reason=hose cut", "--store", store);
        assertEquals(0, logged, () -> err);
        advise("TH-07");
        assertTrue(out.contains("            Powered hood"), out);
        assertTrue(out.contains("WEAR        ! Unit TH-07: DO NOT USE IT."), out);
        assertTrue(out.replaceAll("\\s+", " ").contains("Hand it in for repair and examination."), out);
        assertTrue(out.replaceAll("\\s+", " ").contains("TH-07 is out of use since "), out);
        assertTrue(out.contains("Withdrawn: hose cut"), out);
    }

    @Test
    void aRegisterThatIsNotThereIsSaidSo() {
        store = folder.resolve("absent.db").toString();
        assertEquals(2, advise("TH-07"));
        assertTrue(err.contains("absent.db does not exist."), err);
        assertTrue(err.matches("(?s).*\n\\p{Lu}.*"), err);
    }

    @Test
    void aUnitThatNobodyRegisteredIsRefusedAndNoOtherIsNamed() {
        assertEquals(2, advise("TH-70"));
        assertTrue(
                err.contains("kit.unit") && err.contains("Do not use it until then.") && !err.contains("TH-07"), err);
    }

    private int advise(String unit) {
        return run("advise", TASK, "--set", "kit.unit=" + unit, "--store", store);
    }

    private int run(String... arguments) {
        StringWriter outText = new StringWriter();
        StringWriter errText = new StringWriter();
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(outText, true));
        line.setErr(new PrintWriter(errText, true));
        int code = line.execute(arguments);
        out = outText.toString();
        err = errText.toString();
        return code;
    }
}
