package org.fumewarden.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fumewarden.codes.Problem;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes entries into the record. */
@Command(
        name = "entry",
        aliases = "log",
        mixinStandardHelpOptions = true,
        description = {
            "Writes into the record what was done: a check, examination, fit test, repair or other duty.",
            "Kinds: before-use-check, examination, fit-test, medical, training, air-test, repair, replacement, withdrawal, performed (another duty).",
            "No entry is ever edited. To put a new entry in the place of an earlier one, write corrects=NUMBER corrects-because=REASON.",
            "The kind void takes an earlier entry back.",
            "On a terminal, without fields or a file, it asks."
        },
        footer = {
            "",
            "Example:",
            "  fumewarden entry examination item=U-014 on=2026-03-02 by=\"Sanna Teller\" \\",
            "    result=passed condition=sound flow=171"
        })
final class EntryCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "KIND", description = "What was done.")
    private String kind;

    @Parameters(
            index = "1..*",
            paramLabel = "FIELD=VALUE",
            description = "item, on (today when left out), by, and its fields.")
    private List<String> words = List.of();

    @Option(
            names = "--file",
            paramLabel = "FILE",
            description = "YAML or CSV; one entry for each item or row, with a column kind.")
    private Path file;

    @Option(names = "--list", paramLabel = "ITEM", description = "Lists the entries about an item instead.")
    private String listed;

    @Option(
            names = "--code",
            paramLabel = "ID",
            description = "The code whose limits judge a test of breathing air; that of the site when not given.",
            defaultValue = "")
    private String code;

    @Mixin
    private StoreOption store;

    /** Replaced in tests. */
    Supplier<Optional<Prompts>> terminal = Prompts::ofTerminal;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> listed != null ? list() : log());
    }

    private int list() {
        try (Store open = store.read()) {
            List<Long> superseded = open.superseded(listed);
            for (LogEntry entry : open.entriesOf(listed)) {
                store.out()
                        .println(entry.sequence() + "  " + entry.on() + "  "
                                + entry.details().serves() + "  "
                                + entry.details().result().key() + why(entry) + "  by " + entry.by()
                                + entry.details()
                                        .corrects()
                                        .map(n -> "  corrects " + n)
                                        .orElse("")
                                + (superseded.contains(entry.sequence()) ? "  (corrected later)" : ""));
            }
        }
        return ExitCodes.COMPLETE;
    }

    /** Why it failed, was withdrawn or is not judged, in brackets. */
    private static String why(LogEntry entry) {
        String why = entry.details().whyFailed();
        return why.isEmpty() ? "" : " (" + why + ")";
    }

    private int log() {
        List<FormSource.Form> forms = forms();
        try (Store open = store.open()) {
            LogForms reading = new LogForms(open, store, code);
            List<Draft> drafts = FormSource.each(forms, f -> reading.draft(f, kind == null ? "" : kind));
            List<LogEntry> written = open.appendAll(drafts, store.clock().instant());
            reading.says().forEach(store.out()::println);
            for (LogEntry entry : written) {
                store.out()
                        .println("Entry " + entry.sequence() + ": "
                                + entry.details().serves().replace('/', ' ').replace('-', ' ') + " of " + entry.item()
                                + " on " + entry.on() + ", "
                                + entry.details().result().key() + ".");
                if (entry.details().result() == Result.FAILED
                        && !open.state(entry.item()).inService()) {
                    store.out()
                            .println("DO NOT USE " + entry.item() + ". "
                                    + open.state(entry.item()).because());
                }
            }
        }
        return ExitCodes.COMPLETE;
    }

    private List<FormSource.Form> forms() {
        return FormSource.given(
                file,
                words,
                terminal,
                this::asked,
                new Problem(
                        "entry",
                        0,
                        "",
                        "names neither a field nor a file.",
                        "write entry examination item=U-014 ..., or --file entries.csv."));
    }

    /** What the register holds under this id, so that nobody is asked about the battery of an extraction plant. */
    private Optional<ItemKind> registered(String id) {
        if (!Files.exists(store.file())) {
            return Optional.empty();
        }
        try (Store open = Store.read(store.file())) {
            return open.item(id).map(Item::kind);
        }
    }

    private FormSource.Form asked(Prompts prompts) {
        Map<String, String> values = new LinkedHashMap<>();
        String chosen = kind == null ? prompts.choose("kind", Forms.entryKinds()) : LogForms.known("entry", kind);
        values.put("kind", chosen);
        String about = prompts.ask("item", "id in the register", true);
        values.put("item", about);
        values.put("on", prompts.ask("on", "year-month-day, today is " + store.today(), false));
        values.put("by", prompts.ask("by", "who did it", true));
        Optional<ItemKind> registered = registered(about);
        for (Forms.Field field : Forms.entryFields(chosen)) {
            if (registered.map(field::concerns).orElse(true)) {
                values.put(field.name(), prompts.ask(field.name(), RegisterCommand.hint(field), field.needed()));
            }
        }
        return new FormSource.Form("the answers", values);
    }
}
