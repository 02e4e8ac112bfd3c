package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.fumewarden.advice.Bench;
import org.fumewarden.register.InUse;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Option;

/** The register and log that tell what a task leaves out about the unit and the wearer. */
final class RegisterOption {
    @Option(
            names = "--store",
            paramLabel = "FILE",
            description =
                    "Register and log. A named unit is not for use when it is withdrawn or its examination is overdue. For a named"
                            + " wearer it supplies the recorded medical clearance, training and fit test in the named mask, or in every mask."
                            + " What is stricter counts, file or register. The sheet says what the register said.")
    private Path store;

    private boolean damaged;

    /** The file that was named, or null. */
    Path file() {
        return store;
    }

    /** The task with what the register says of it; a damage is told. */
    Bench with(Bench bench, PrintWriter err) {
        return store == null
                ? bench
                : InUse.with(bench, () -> {
                    Store read = Store.read(store);
                    damaged = StoreOption.tell(read, err);
                    return read;
                });
    }

    /** True when the register that was read is damaged. */
    boolean damaged() {
        return damaged;
    }
}
