package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
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
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.model.Keyed;
import org.fumewarden.task.Health;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts people and things into the register. */
@Command(
        name = "register",
        mixinStandardHelpOptions = true,
        description = {
            "Registers a wearer, unit, mask, filter, battery, extraction system, air supply or site.",
            "Registering an id again changes the item; the earlier state stays in the log.",
            "On a terminal, without fields or a file, it asks."
        },
        footer = {
            "",
            "Example:",
            "  fumewarden register unit id=U-014 description=\"blower unit\" \\",
            "    minimum-flow=160 air-delivery=powered" + " face-seal=loose \\",
            "    use-mode=routine disposable=no"
        })
final class RegisterCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "KIND", description = "Kind of item.")
    private String kind;

    @Parameters(index = "1..*", paramLabel = "FIELD=VALUE", description = "Its fields, and facts on which duties hang.")
    private List<String> words = List.of();

    @Option(
            names = "--file",
            paramLabel = "FILE",
            description = "YAML or CSV; one item for each entry or row, with a column kind.")
    private Path file;

    @Option(names = "--list", description = "Lists the register instead.")
    private boolean list;

    @Option(
            names = "--by",
            paramLabel = "NAME",
            description = "Name of the person who enters it.",
            defaultValue = "${sys:user.name}")
    private String by;

    @Mixin
    private StoreOption store;

    /** Replaced in tests. */
    Supplier<Optional<Prompts>> terminal = Prompts::ofTerminal;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> list ? list() : register());
    }

    private int list() {
        try (Store open = store.read()) {
            for (Item item : open.items()) {
                if (kind == null || kind.equals(item.kind().key())) {
                    store.out().println(item.id() + "  " + item.kind().key() + "  " + item.label());
                }
            }
        }
        return ExitCodes.COMPLETE;
    }

    private int register() {
        Vocabularies vocabulary = Vocabularies.shipped(LocalDate.now());
        List<Draft> drafts = FormSource.each(forms(vocabulary), f -> draft(f, vocabulary));
        try (Store open = store.open()) {
            for (LogEntry entry : open.appendAll(drafts, store.clock().instant())) {
                store.out().println("Entry " + entry.sequence() + ": " + entry.item() + " is registered.");
            }
        }
        return ExitCodes.COMPLETE;
    }

    private Draft draft(FormSource.Form form, Vocabularies vocabulary) {
        Map<String, String> values = new LinkedHashMap<>(form.values());
        String given = values.remove("kind");
        String wanted = known(form.place(), given == null ? (kind == null ? "" : kind) : given);
        Map<String, List<String>> facts = vocabulary.take(form.place(), values);
        List<String> fields =
                Forms.itemFields(wanted).stream().map(Forms.Field::name).toList();
        if (wanted.equals("wearer")) {
            ofThePerson(form.place(), values, fields);
        }
        unknown(form.place(), values, fields, vocabulary);
        return form.placed(() -> Draft.registering(Forms.item(wanted, values, facts), store.today(), by));
    }

    private List<FormSource.Form> forms(Vocabularies vocabulary) {
        return FormSource.given(
                file,
                words,
                terminal,
                p -> asked(p, vocabulary),
                new Problem(
                        "register",
                        0,
                        "",
                        "names neither a field nor a file.",
                        "register unit id=U-014 ..., or --file items.csv."));
    }

    private FormSource.Form asked(Prompts prompts, Vocabularies vocabulary) {
        Map<String, String> values = new LinkedHashMap<>();
        String chosen = kind == null ? prompts.choose("kind", Forms.itemKinds()) : known("register", kind);
        values.put("kind", chosen);
        for (Forms.Field field : Forms.itemFields(chosen)) {
            values.put(field.name(), prompts.ask(field.name(), hint(field), field.needed()));
        }
        for (String fact : new java.util.TreeSet<>(
                Keyed.find(ItemKind.class, chosen).orElseThrow().ownFacts())) {
            values.put(
                    fact,
                    prompts.ask(fact, String.join(", ", vocabulary.facts().getOrDefault(fact, List.of())), false));
        }
        return new FormSource.Form("the answers", values);
    }

    static String hint(Forms.Field field) {
        return switch (field.kind()) {
            case "day" -> "year-month-day";
            case "number" -> "digits only";
            case "yes-or-no" -> "yes or no";
            case "result" -> "passed or failed";
            case "words" -> "separated by commas";
            case "points" -> "point:passed or point:failed, separated by commas";
            default -> field.name().equals("face") ? "half (filtering facepieces included) or full" : "";
        };
    }

    private static String known(String place, String kind) {
        if (Forms.itemKinds().contains(kind)) {
            return kind;
        }
        throw new InputException(new Problem(
                place,
                0,
                "kind",
                "cannot be \"" + Located.shown(kind) + "\".",
                Nearest.remedy(kind, Forms.itemKinds())));
    }

    private static void ofThePerson(String place, Map<String, String> values, List<String> fields) {
        values.keySet().stream()
                .filter(name -> !fields.contains(name) && Health.isMeant(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new InputException(new Problem(
                            place,
                            0,
                            Located.shown(name),
                            "is not kept here: the register holds no health, age or origin of a person.",
                            "leave it out. Whether the doctor has cleared a wearer is an entry: entry medical item=..."
                                    + " topic=clearance result=passed"));
                });
    }

    private static void unknown(
            String place, Map<String, String> values, List<String> fields, Vocabularies vocabulary) {
        for (String name : values.keySet()) {
            if (!fields.contains(name)) {
                List<String> all = new ArrayList<>(fields);
                all.addAll(vocabulary.facts().keySet());
                throw new InputException(new Problem(
                        place,
                        0,
                        Located.shown(name),
                        "is not a field of this kind. Its fields: " + String.join(", ", fields) + ".",
                        Nearest.to(name, all).isEmpty()
                                ? "use one of its fields; \"schema\" lists the facts of the law."
                                : Nearest.remedy(name, all)));
            }
        }
    }
}
