package org.fumewarden.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.EntryForm;
import org.fumewarden.duties.Judging;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Store;

/** Turns forms into drafts of entries. */
final class LogForms {
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
        unknown(form.place(), wanted, values);
        EntryForm.Filled filled =
                new EntryForm(wanted, values).filled(judging, option.today().toString());
        if (!filled.says().isEmpty()) {
            says.add(filled.says());
        }
        return filled.draft();
    }

    static String known(String place, String kind) {
        List<String> kinds = new ArrayList<>(Forms.entryKinds());
        kinds.add(EntryForm.VOID);
        if (kinds.contains(kind)) {
            return kind;
        }
        throw new InputException(new Problem(
                place, 0, "kind", "cannot be \"" + Located.shown(kind) + "\".", Nearest.remedy(kind, kinds)));
    }

    private static void unknown(String place, String kind, Map<String, String> values) {
        List<String> all = new ArrayList<>(EntryForm.COMMON);
        all.addAll(
                kind.equals(EntryForm.VOID)
                        ? List.of("entry", "reason")
                        : Forms.entryFields(kind).stream()
                                .map(Forms.Field::name)
                                .toList());
        for (String name : values.keySet()) {
            if (!all.contains(name)) {
                throw new InputException(new Problem(
                        place, 0, Located.shown(name), "is not a field of " + kind + ".", Nearest.remedy(name, all)));
            }
        }
    }
}
