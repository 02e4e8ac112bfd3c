package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Count;
import org.fumewarden.upkeep.Backup;
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
                "Verifies, backs up, restores, exports, imports, merges and salvages the register and the log, and says what"
                        + " may be discarded.",
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
                            description = "A seal noted earlier: it must still be there.")
                    String expect)
            throws Exception {
        return store.guarded(() -> {
            Verification found = StoreCheck.verify(store.file(), head(expect));
            if (found.intact()) {
                store.out()
                        .println("Intact: " + Count.of(found.head().entries(), "entry") + ".\nSeal "
                                + found.head().word());
                found.doubts().forEach(d -> store.out().println("Look at " + d));
                store.out()
                        .println(
                                "Note the seal down elsewhere: with --expect it proves that nothing was cut off the end.");
                return ExitCodes.COMPLETE;
            }
            Verification.Damage first = found.first().orElseThrow();
            store.out().println("Broken. First: " + first.text());
            found.damages().stream().filter(d -> !d.equals(first)).forEach(d -> store.out()
                    .println("  also " + d.text()));
            store.out().println("Intact up to entry " + found.head().entries() + ".");
            store.out()
                    .println("Run \"store salvage FILE\" and bring the file to a person you trust with the records.");
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
            OutputFile target = fresh(file, store);
            Head[] head = new Head[1];
            try (Store open = Store.read(store.file())) {
                target.write(out -> {
                    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                    head[0] = open.snapshot(() -> exported(open, text));
                    text.flush();
                });
            }
            store.out()
                    .println(
                            Count.of(head[0].entries(), "entry") + " written to " + file + ".\nSeal " + head[0].word());
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
            mixinStandardHelpOptions = true,
            description = "Copies the whole store into a new file, also while others write, and verifies the copy.",
            footer = {"", "Example:", "  fumewarden store backup register-2026-03-02.db"})
    int backup(@Mixin StoreOption store, @Parameters(paramLabel = "FILE") Path file) throws Exception {
        return store.guarded(() -> {
            Head head = Backup.write(store.file(), file);
            store.out().println(Count.of(head.entries(), "entry") + " copied to " + file + ".\nSeal " + head.word());
            return ExitCodes.COMPLETE;
        });
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Verifies a backup and makes a store of it, at a place where none is.",
            footer = {"", "Example:", "  fumewarden store restore register-2026-03-02.db --store restored.db"})
    int restore(@Mixin StoreOption store, @Parameters(paramLabel = "BACKUP") Path file) throws Exception {
        return store.guarded(() -> {
            Head head = Backup.restore(file, store.file());
            store.out()
                    .println(Count.of(head.entries(), "entry") + " restored to " + store.file() + ".\nSeal "
                            + head.word());
            return ExitCodes.COMPLETE;
        });
    }

    @Command(
            mixinStandardHelpOptions = true,
            description =
                    "Appends the export of another store, such as that of a site that was taken over: all of it or nothing.",
            footer = {"", "Example:", "  fumewarden store merge slipway.jsonl --store fumewarden.db"})
    int merge(@Mixin StoreOption store, @Parameters(paramLabel = "EXPORT") Path file) throws Exception {
        return store.guarded(() -> {
            Head head = reading(file, in -> {
                Store.read(store.file()).close();
                try (Store open = Store.open(store.file())) {
                    return JsonLines.merge(open, in);
                }
            });
            store.out().println("The store now has " + Count.of(head.entries(), "entry") + ".\nSeal " + head.word());
            return ExitCodes.COMPLETE;
        });
    }

    private interface Reading<T> {
        T from(BufferedReader in) throws IOException;
    }

    private static <T> T reading(Path file, Reading<T> work) throws IOException {
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return work.from(in);
        } catch (NoSuchFileException e) {
            throw new InputException(
                    new Problem(file.toString(), 0, "", "does not exist.", "check the spelling of the path."));
        } catch (CharacterCodingException | java.io.UncheckedIOException e) {
            throw new InputException(new Problem(
                    file.toString(), 0, "", "is not UTF-8 text.", "name a file that \"store export\" wrote."));
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
            Head head = reading(file, in -> {
                try (Store open = Store.open(store.file())) {
                    return salvaged ? JsonLines.importSalvaged(open, in) : JsonLines.importInto(open, in);
                }
            });
            store.out().println(Count.of(head.entries(), "entry") + " read.\nSeal " + head.word());
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
            OutputFile target = fresh(file, store);
            StringWriter lines = new StringWriter();
            Salvage.Report report = Salvage.export(store.file(), lines);
            if (report.saved() == 0) {
                store.out()
                        .println("Nothing could be saved: no entry in " + store.file()
                                + " proves itself. No file was written.\nLook for a backup.");
                return ExitCodes.NOT_SETTLED;
            }
            target.write(lines.toString().getBytes(StandardCharsets.UTF_8));
            store.out()
                    .println(Count.of(report.saved(), "entry") + " saved to " + file + "; the highest number is "
                            + report.highest() + ".");
            store.out().println(report.lost().isEmpty() ? "No gap among them." : "Lost: " + report.lost() + ".");
            if (!report.whole()) {
                store.out()
                        .println("The file is damaged, and what stood after entry " + report.highest()
                                + " it cannot tell.\nCompare with a seal noted earlier, and with a backup.");
                return ExitCodes.NOT_SETTLED;
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
            try (Store open = store.read()) {
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

    private static OutputFile fresh(Path file, StoreOption store) {
        return new OutputFile("", file, false)
                .sparing(store.file())
                .orElse("name a new file.")
                .admit();
    }
}
