package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;
import org.fumewarden.upkeep.Verification;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where the register and the log are, and how their faults reach the user. */
final class StoreOption {
    @Option(
            names = "--store",
            paramLabel = "FILE",
            description = "Register and log; $$FUMEWARDEN_STORE, or fumewarden.db in this folder, when not given.")
    private String file;

    private boolean damaged;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    Path file() {
        String name = Optional.ofNullable(file)
                .or(() -> Optional.ofNullable(System.getenv("FUMEWARDEN_STORE")).filter(s -> !s.isBlank()))
                .orElse("fumewarden.db");
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(), "--store names no file: \"" + name + "\"\nRemove odd characters.");
        }
    }

    /** Asked for late: finding the time zone of the machine is slow, and most commands never need it. */
    Clock clock() {
        return Clock.systemDefaultZone();
    }

    LocalDate today() {
        return LocalDate.now(clock());
    }

    PrintWriter out() {
        return spec.commandLine().getOut();
    }

    /**
     * The tables in force on a day, of the named code or else of the code that the site is registered under.
     *
     * @param code what the user named; empty when nothing
     */
    static DutyBook duties(String code, Store open, LocalDate on) {
        RuleFolder rules = RuleFolder.shipped();
        return DutyBook.of(CodeBook.read(rules, code(code, open)), on);
    }

    /** The id of the named code, or else of the code that the site is registered under. */
    static String code(String code, Store open) {
        return code.isEmpty() ? registered(open, RuleFolder.shipped()) : code;
    }

    private static String registered(Store open, RuleFolder rules) {
        return open.items(Item.Site.class).stream()
                .map(Item.Site::code)
                .filter(c -> !c.isEmpty())
                .findFirst()
                .orElseThrow(() -> new InputException(new Problem(
                        "--code",
                        0,
                        "",
                        "is not given, and the site is not registered under a country's rules.",
                        "say which country's rules apply: --code with one of "
                                + String.join(", ", rules.codes())
                                + ", or register the site once with code=...")));
    }

    /** The store for reading; damage is told, and nothing that is answered from it counts as settled. */
    Store read() {
        return tell(Store.read(file()));
    }

    /** The store for writing; damage is told likewise. */
    Store open() {
        return tell(Store.open(file()));
    }

    private Store tell(Store store) {
        damaged |= tell(store, spec.commandLine().getErr());
        return store;
    }

    /** Says what is damaged in a store, once; true when something is. */
    static boolean tell(Store store, PrintWriter err) {
        List<Verification.Damage> damages = store.soundness().damages();
        damages.forEach(d -> err.println("The store is damaged: " + d.text()));
        if (!damages.isEmpty()) {
            err.println("Nothing that hangs on this is shown. Run \"store verify\", then \"store salvage\".");
        }
        return !damages.isEmpty();
    }

    /** Says what is wrong with a store and gives the exit code for it. */
    static int explain(StoreException fault, Speech speech, PrintWriter err) {
        err.println(speech.quoting(fault.getMessage()) + "\n" + speech.quoting(fault.remedy()));
        return switch (fault.reason()) {
            case REFUSED, MISSING, READ_ONLY -> ExitCodes.BAD_INPUT;
            case DAMAGED -> ExitCodes.NOT_SETTLED;
            case FULL, BUSY, FAULT -> ExitCodes.FAULT;
        };
    }

    /** Runs a command and turns every expected fault into words and an exit code. */
    int guarded(Callable<Integer> work) throws Exception {
        try {
            int code = work.call();
            out().flush();
            return damaged && code == ExitCodes.COMPLETE ? ExitCodes.NOT_SETTLED : code;
        } catch (StoreException | InputException e) {
            return Main.explain(e, spec.commandLine());
        }
    }
}
