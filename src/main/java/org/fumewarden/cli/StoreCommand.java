package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.upkeep.Head;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.JsonLines;
import org.fumewarden.upkeep.Retention;
import org.fumewarden.upkeep.Salvage;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreCheck;
import org.fumewarden.upkeep.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Cares for the store itself. */
@Command(
        name = "store",
        mixinStandardHelpOptions = true,
        description =
                "Verifies, exports, imports and salvages the register and the log, and says what may be discarded.",
        footer = {"", "Example:", "  fumewarden store verify"})
final class StoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return ExitCodes.BAD_INPUT;
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Checks every entry against the chain; names the first broken one.",
            footer = {"", "Example:", "  fumewarden store verify --store fumewarden.db"})
    int verify(
            @Mixin StoreOption store,
            @Option(
                            names = "--expect",
                            paramLabel = "HEAD",
                            description = "A head noted earlier: it must still be there.")
                    String expect)
            throws Exception {
        return store.guarded(() -> {
            Verification found = StoreCheck.verify(store.file(), head(expect));
            if (found.intact()) {
                store.out()
                        .println("Intact: " + found.head().entries() + " entries.\nHead "
                                + found.head().word());
                store.out()
                        .println(
                                "Note the head down elsewhere: with --expect it proves that nothing was cut off the end.");
                return ExitCodes.COMPLETE;
            }
            store.out().println("Broken. First: " + found.first().orElseThrow().text());
            found.damages().stream().skip(1).forEach(d -> store.out().println("  also " + d.text()));
            store.out().println("Intact up to entry " + found.head().entries() + ".");
            store.out()
                    .println(
                            "Maybe run \"store salvage FILE\" and bring the file to a person you trust with the records.");
            return ExitCodes.NOT_SETTLED;
        });
    }

    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            description = "Writes the whole store as JSON Lines into a new file.",
            footer = {"", "Example:", "  fumewarden store export register.jsonl"})
    int exportTo(@Mixin StoreOption store, @Parameters(paramLabel = "FILE") Path file) throws Exception {
        return store.guarded(() -> {
            try (Store open = Store.read(store.file());
                    Writer out = fresh(file)) {
                Head head = open.snapshot(() -> exported(open, out));
                store.out().println(head.entries() + " entries written to " + file + ".\nHead " + head.word());
            }
            return ExitCodes.COMPLETE;
        });
    }

    private static Head exported(Store open, Writer out) {
        try {
            return JsonLines.export(open, out);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description = "Reads an export into a new store.",
            footer = {"", "Example:", "  fumewarden store import register.jsonl --store copy.db"})
    int importFrom(
            @Mixin StoreOption store,
            @Parameters(paramLabel = "FILE") Path file,
            @Option(names = "--salvaged", description = "The file comes from salvage: number the entries anew.")
                    boolean salvaged)
            throws Exception {
        return store.guarded(() -> {
            try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                    Store open = Store.open(store.file())) {
                Head head = salvaged ? JsonLines.importSalvaged(open, in) : JsonLines.importInto(open, in);
                store.out().println(head.entries() + " entries read.\nHead " + head.word());
            } catch (NoSuchFileException e) {
                throw new InputException(
                        new Problem(file.toString(), 0, "", "does not exist.", "check the spelling of the path."));
            } catch (CharacterCodingException | java.io.UncheckedIOException e) {
                throw new InputException(new Problem(
                        file.toString(), 0, "", "is not UTF-8 text.", "name a file that \"store export\" wrote."));
            }
            return ExitCodes.COMPLETE;
        });
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Writes what is intact in a broken store as JSON Lines into a new file.",
            footer = {"", "Example:", "  fumewarden store salvage salvaged.jsonl"})
    int salvage(@Mixin StoreOption store, @Parameters(paramLabel = "FILE") Path file) throws Exception {
        return store.guarded(() -> {
            if (!Files.isRegularFile(store.file())) {
                throw new InputException(new Problem(
                        store.file().toString(), 0, "", "does not exist.", "name the broken file with --store."));
            }
            try (Writer out = fresh(file)) {
                Salvage.Report report = Salvage.export(store.file(), out);
                store.out()
                        .println(report.saved() + " entries saved to " + file + "; the highest number is "
                                + report.highest() + ".");
                store.out().println(report.lost().isEmpty() ? "No gap among them." : "Lost: " + report.lost() + ".");
            }
            return ExitCodes.COMPLETE;
        });
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Says which records may be discarded, and from when. Discards nothing.",
            footer = {"", "Example:", "  fumewarden store retention --all"})
    int retention(
            @Mixin StoreOption store,
            @Option(
                            names = "--code",
                            paramLabel = "ID",
                            description = "That of the site when not given.",
                            defaultValue = "")
                    String code,
            @Option(names = "--all", description = "Also what must still be kept.") boolean all)
            throws Exception {
        return store.guarded(() -> {
            try (Store open = Store.read(store.file())) {
                Retention retention = new Retention(
                        open, StoreOption.duties(code, open, store.today()).duties());
                for (Item item : open.items()) {
                    for (Retention.Kept kept : retention.of(item)) {
                        boolean gone = kept.mayGo(store.today());
                        if (all || gone) {
                            store.out()
                                    .println(kept.entry().sequence() + "  " + item.id() + "  "
                                            + kept.entry().details().serves() + "  " + (gone ? "may go" : "keep") + "  "
                                            + kept.keepThrough()
                                                    .map(d -> "through " + d)
                                                    .orElse(kept.why()));
                        }
                    }
                }
                store.out()
                        .println(
                                "Nothing was discarded. A person decides, after asking for disputes, claims and ill health.");
            }
            return ExitCodes.COMPLETE;
        });
    }

    private static Optional<Head> head(String word) {
        if (word == null) {
            return Optional.empty();
        }
        if (!word.matches("[0-9]{1,15}:[0-9a-f]{64}")) {
            throw new InputException(new Problem(
                    "--expect",
                    0,
                    "",
                    "cannot be \"" + word + "\".",
                    "copy the word after Head, a count, a colon and 64 digits."));
        }
        int colon = word.indexOf(':');
        return Optional.of(new Head(Long.parseLong(word.substring(0, colon)), word.substring(colon + 1)));
    }

    private static Writer fresh(Path file) throws IOException {
        try {
            return Files.newBufferedWriter(
                    file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new InputException(
                    new Problem(file.toString(), 0, "", "exists and is not overwritten.", "name a new file."));
        } catch (NoSuchFileException e) {
            throw new InputException(new Problem(
                    file.toString(), 0, "", "lies in a folder that does not exist.", "make the folder first."));
        }
    }
}
