package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import org.fumewarden.codes.Located;
import org.fumewarden.whatif.Bench;

/** A task with what the register says of the unit and the wearer that it names. */
final class InUse {
    private InUse() {}

    /**
     * The bench with what the register says.
     *
     * @param notes gets a line for each thing that the register decided
     */
    static Bench with(Bench bench, Path register, PrintWriter notes) {
        Bench worn = bench.with(UnitInUse.of(bench.tree(Map.of()), register));
        Located task = worn.tree(Map.of());
        WearerInUse.Found found = WearerInUse.of(
                task, register, worn.code(), worn.task(worn.code(), Map.of()).on());
        found.notes().forEach(n -> notes.println("Register: " + n));
        notes.flush();
        return worn.with(found.changes());
    }
}
