package org.fumewarden.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Entry;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes entries into the log. */
@Command(
        name = "log",
        mixinStandardHelpOptions = true,
        description = {
            "Logs a before-use-check, examination, fit-test, medical, training, air-test, repair, replacement, withdrawal,",
            "or another duty done (performed). Entries are never edited: corrects=NUMBER corrects-because=... puts the new entry in the",
            "place of an earlier one, and the kind void takes an earlier one back.",
            "On a terminal, without fields or a file, it asks."
        },
        footer = {
            "",
            "Example:",
            "  fumewarden log examination item=U-014 on=2026-03-02 by=\"Sanna Teller\" result=passed condition=sound flow=171"
        })
final class LogCommand implements Callable<Integer> {
    private static final String VOID = "void";

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

    @Mixin
    private StoreOption store;

    /** Replaced in tests. */
    Supplier<Optional<Prompts>> terminal = Prompts::ofTerminal;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> listed != null ? list() : log());
    }

    private int list() {
        try (Store open = Store.read(store.file())) {
            List<Long> superseded = open.superseded(listed);
            for (Entry entry : open.entriesOf(listed)) {
                store.out()
                        .println(entry.sequence() + "  " + entry.on() + "  "
                                + entry.details().serves() + "  "
                                + entry.details().result().key() + "  by " + entry.by()
                                + entry.details()
                                        .corrects()
                                        .map(n -> "  corrects " + n)
                                        .orElse("")
                                + (superseded.contains(entry.sequence()) ? "  (corrected later)" : ""));
            }
        }
        return ExitCodes.COMPLETE;
    }

    private int log() {
        List<FormSource.Form> forms = forms();
        try (Store open = Store.open(store.file())) {
            List<Draft> drafts = forms.stream().map(f -> draft(f, open)).toList();
            for (Entry entry : open.appendAll(drafts, store.clock().instant())) {
                store.out()
                        .println("Entry " + entry.sequence() + ": "
                                + entry.details().serves() + " of " + entry.item() + " on " + entry.on() + ", "
                                + entry.details().result().key() + ".");
                if (entry.details().result() == Result.FAILED
                        && !open.state(entry.item()).inService()) {
                    store.out()
                            .println(entry.item() + " is closed. "
                                    + open.state(entry.item()).because() + ".");
                }
            }
        }
        return ExitCodes.COMPLETE;
    }

    private List<FormSource.Form> forms() {
        if (file != null) {
            return FormSource.file(file);
        }
        if (!words.isEmpty()) {
            return List.of(FormSource.words(words));
        }
        Prompts prompts = terminal.get()
                .orElseThrow(() -> new InputException(new Problem(
                        "log",
                        0,
                        "",
                        "has neither fields nor a file.",
                        "log examination item=U-014 ..., or --file entries.csv.")));
        return List.of(asked(prompts));
    }

    private FormSource.Form asked(Prompts prompts) {
        Map<String, String> values = new LinkedHashMap<>();
        String chosen = kind == null ? prompts.choose("kind", Forms.entryKinds()) : known("log", kind);
        values.put("kind", chosen);
        values.put("item", prompts.ask("item", "id in the register", true));
        values.put("on", prompts.ask("on", "year-month-day, today is " + store.today(), false));
        values.put("by", prompts.ask("by", "who did it", true));
        for (Forms.Field field : Forms.entryFields(chosen)) {
            values.put(field.name(), prompts.ask(field.name(), RegisterCommand.hint(field), field.needed()));
        }
        return new FormSource.Form("the answers", values);
    }

    private Draft draft(FormSource.Form form, Store open) {
        Map<String, String> values = new LinkedHashMap<>(form.values());
        String given = values.remove("kind");
        String wanted = known(form.place(), given == null ? (kind == null ? "" : kind) : given);
        String item = taken(values, "item");
        String on = taken(values, "on");
        String by = taken(values, "by");
        String corrects = taken(values, "corrects");
        String because = taken(values, wanted.equals(VOID) ? "reason" : "corrects-because");
        Details details = wanted.equals(VOID)
                ? new Details.Correction(number(form.place(), taken(values, "entry")), because, Optional.empty())
                : details(form, wanted, values, item, open);
        unknown(form.place(), wanted, values);
        if (!corrects.isEmpty()) {
            details = new Details.Correction(number(form.place(), corrects), because, Optional.of(details));
        }
        return new Draft(item, on.isEmpty() ? store.today() : Forms.day("on", on), by, details);
    }

    /** The details; a measured flow is held against the minimum of the register when the form does not repeat it. */
    private static Details details(
            FormSource.Form form, String wanted, Map<String, String> values, String item, Store open) {
        unknown(form.place(), wanted, values);
        if (!values.getOrDefault("flow", "").isBlank()
                && values.getOrDefault("minimum-flow", "").isBlank()) {
            open.item(item)
                    .filter(org.fumewarden.upkeep.Item.Unit.class::isInstance)
                    .map(org.fumewarden.upkeep.Item.Unit.class::cast)
                    .flatMap(org.fumewarden.upkeep.Item.Unit::minimumFlow)
                    .ifPresent(m -> values.put("minimum-flow", m.toPlainString()));
        }
        return Forms.details(wanted, values);
    }

    private static String taken(Map<String, String> values, String name) {
        String value = values.remove(name);
        return value == null ? "" : value.strip();
    }

    private static long number(String place, String text) {
        if (text.matches("[0-9]{1,15}")) {
            return Long.parseLong(text);
        }
        throw new InputException(new Problem(
                place,
                0,
                "the number of the entry",
                "cannot be \"" + Located.shown(text) + "\".",
                "see log --list ITEM."));
    }

    private static String known(String place, String kind) {
        List<String> kinds = new ArrayList<>(Forms.entryKinds());
        kinds.add(VOID);
        if (kinds.contains(kind)) {
            return kind;
        }
        throw new InputException(new Problem(
                place, 0, "kind", "cannot be \"" + Located.shown(kind) + "\".", Nearest.maybe(kind, kinds)));
    }

    private static void unknown(String place, String kind, Map<String, String> values) {
        List<String> fields =
                new ArrayList<>(List.of("item", "on", "by", "corrects", "corrects-because", "entry", "reason"));
        if (!kind.equals(VOID)) {
            Forms.entryFields(kind).forEach(f -> fields.add(f.name()));
        }
        for (String name : values.keySet()) {
            boolean field = !kind.equals(VOID)
                    && Forms.entryFields(kind).stream().anyMatch(f -> f.name().equals(name));
            if (!field) {
                throw new InputException(new Problem(
                        place, 0, Located.shown(name), "is not a field of " + kind + ".", Nearest.maybe(name, fields)));
            }
        }
    }
}
