package org.fumewarden.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.Judging;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Store;

/** Turns forms into drafts of entries. */
final class LogForms {
    static final String VOID = "void";

    private final StoreOption option;
    private final Judging judging;
    private final List<String> says = new ArrayList<>();

    LogForms(Store store, StoreOption option, String code) {
        this.option = option;
        Map<String, DutyBook> read = new HashMap<>();
        this.judging =
                new Judging(store, () -> read.computeIfAbsent(code, c -> StoreOption.duties(c, store, option.today())));
    }

    /** How the forms were judged so far, a sentence each. */
    List<String> says() {
        return List.copyOf(says);
    }

    Draft draft(FormSource.Form form, String kind) {
        return form.placed(() -> read(form, kind));
    }

    private Draft read(FormSource.Form form, String kind) {
        Map<String, String> values = new LinkedHashMap<>(form.values());
        String given = values.remove("kind");
        String wanted = known(form.place(), given == null ? kind : given);
        String item = taken(values, "item");
        String on = taken(values, "on");
        String by = taken(values, "by");
        String corrects = taken(values, "corrects");
        String because = taken(values, wanted.equals(VOID) ? "reason" : "corrects-because");
        Details details;
        if (wanted.equals(VOID)) {
            long entry = number(form.place(), taken(values, "entry"));
            unknown(form.place(), wanted, values);
            details = new Details.Correction(entry, because, Optional.empty());
        } else {
            details = details(form, wanted, values, item);
        }
        if (!corrects.isEmpty()) {
            details = new Details.Correction(number(form.place(), corrects), because, Optional.of(details));
        }
        return new Draft(item, on.isEmpty() ? option.today() : Forms.day("on", on), by, details);
    }

    private Details details(FormSource.Form form, String wanted, Map<String, String> values, String item) {
        unknown(form.place(), wanted, values);
        Judging.Judged judged = judging.of(wanted, item, values);
        if (!judged.says().isEmpty()) {
            says.add(judged.says());
        }
        return judged.details();
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

    static String known(String place, String kind) {
        List<String> kinds = new ArrayList<>(Forms.entryKinds());
        kinds.add(VOID);
        if (kinds.contains(kind)) {
            return kind;
        }
        throw new InputException(new Problem(
                place, 0, "kind", "cannot be \"" + Located.shown(kind) + "\".", Nearest.remedy(kind, kinds)));
    }

    private static void unknown(String place, String kind, Map<String, String> values) {
        List<String> own = kind.equals(VOID)
                ? List.of()
                : Forms.entryFields(kind).stream().map(Forms.Field::name).toList();
        List<String> all = new ArrayList<>(List.of("item", "on", "by", "corrects", "corrects-because"));
        all.addAll(own);
        for (String name : values.keySet()) {
            if (!own.contains(name)) {
                throw new InputException(new Problem(
                        place, 0, Located.shown(name), "is not a field of " + kind + ".", Nearest.remedy(name, all)));
            }
        }
    }
}
