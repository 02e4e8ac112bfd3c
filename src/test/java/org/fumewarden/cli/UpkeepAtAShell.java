package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A store with a site and a unit, and commands that a person at a shell runs on it. */
abstract class UpkeepAtAShell {
    @TempDir
    Path folder;

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    final int run(Object command, String... words) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        List<String> all = new ArrayList<>(List.of(words));
        int at = command instanceof StoreCommand ? 1 : 0;
        all.add(at, "--store");
        all.add(at + 1, folder.resolve("log.db").toString());
        CommandLine line = new CommandLine(command);
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        int code = line.execute(all.toArray(String[]::new));
        assertFalse(err.toString().contains("\tat "), "no stack trace: " + err);
        return code;
    }

    private void registered() {
        assertEquals(
                0,
                run(
                        new RegisterCommand(),
                        "site",
                        "id=site",
                        "employer=Tarn Haven Fabrication",
                        "address=Quay Road 1, Tarn Haven",
                        "code=gb",
                        "monitoring-needed=false"),
                err.toString());
        assertEquals(
                0,
                run(
                        new RegisterCommand(),
                        "unit",
                        "id=U-014",
                        "description=blower unit",
                        "minimum-flow=160",
                        "air-delivery=powered",
                        "face-seal=loose",
                        "use-mode=routine",
                        "disposable=no"),
                err.toString());
    }

    final int examined(String day, String flow) {
        return run(
                new EntryCommand(),
                "examination",
                "item=U-014",
                "on=" + day,
                "by=Sanna Teller",
                "result=passed",
                "condition=sound",
                "flow=" + flow);
    }

    @BeforeEach
    void begin() {
        registered();
    }
}
