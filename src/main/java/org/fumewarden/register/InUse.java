package org.fumewarden.register;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.task.Task;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.UnitState;

/** A task with what the register says of the unit, the mask and the wearer that it names. */
public final class InUse {
    /** Where the sentences of the register stand in a task. */
    private static final String REGISTER = "register";

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /**
     * What the register changes in a task.
     *
     * @param notes why, a sentence for each answer
     */
    record Found(Map<String, String> changes, List<RegisterNote> notes) {}

    private InUse() {}

    /**
     * The bench with what the register says; the sentences go into the task, so that they are kept and replayed with it.
     *
     * @param register opened only when the task names something of it, and closed again
     * @throws InputException when the task names what the register does not hold
     * @throws org.fumewarden.upkeep.StoreException when the register cannot be read
     */
    public static Bench with(Bench bench, Supplier<Store> register) {
        Located task = bench.tree(Map.of());
        Map<String, String> changes = new HashMap<>();
        List<RegisterNote> notes = List.of();
        if (names(task, "kit", "unit") || names(task, "kit", "mask") || names(task, "wearer", "id")) {
            try (Store store = register.get()) {
                Task read = bench.task(bench.code(), Map.of());
                LocalDate day = read.on();
                List<Duty> duties = DutyBook.of(bench.book(), day).duties();
                Found unit = UnitInUse.of(task, read, store, duties);
                Found wearer = WearerInUse.of(task, store, duties, day);
                changes.putAll(unit.changes());
                changes.putAll(wearer.changes());
                notes = Stream.concat(unit.notes().stream(), wearer.notes().stream())
                        .toList();
            }
        }
        if (!notes.isEmpty() || task.entries().containsKey(REGISTER)) {
            changes.put(REGISTER, written(notes));
        }
        return bench.with(changes);
    }

    private static boolean names(Located task, String part, String question) {
        return named(answers(task, part), question).isPresent();
    }

    private static String written(List<RegisterNote> notes) {
        try {
            return MAPPER.writeValueAsString(notes.stream()
                    .map(n -> Map.of("about", n.about(), "says", n.says()))
                    .toList());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The answers of a part of the task; none when it is not there. */
    static Map<String, Located> answers(Located task, String part) {
        return Optional.ofNullable(task.entries().get(part))
                .filter(Located::isMap)
                .map(Located::entries)
                .orElse(Map.of());
    }

    /** An answer that names something of the register; none when it is left out or unknown. */
    static Optional<Located> named(Map<String, Located> answers, String question) {
        return Optional.ofNullable(answers.get(question))
                .filter(a -> !a.isNull() && !a.text().isBlank() && !a.text().equals("unknown"));
    }

    /**
     * What the register holds under a name of the task.
     *
     * @throws InputException when it holds nothing of this kind there
     */
    static <T extends Item> T item(Located named, Store store, ItemKind kind, Class<T> type) {
        return store.item(named.text()).filter(type::isInstance).map(type::cast).orElseThrow(() -> {
            return new InputException(new Problem(
                    named.file(),
                    named.line(),
                    named.path(),
                    "names a " + kind.key() + " that the register does not hold: \"" + Located.shown(named.text())
                            + "\".",
                    remedy(
                            named.text(),
                            store.items(type),
                            kind == ItemKind.WEARER
                                    ? "check the id, or register the wearer. Until then this person does not start."
                                    : unread("on the " + kind.key()))));
        });
    }

    /** What would do for an id that the register does not hold: that of one of some items, if it was only mistyped. */
    public static String remedy(String id, Collection<? extends Item> items, String otherwise) {
        return Nearest.slip(id, items.stream().map(Item::id).toList()).orElse(otherwise);
    }

    /** What to do with a thing whose number the register does not hold. */
    public static String unread(String place) {
        return "read the number " + place + " again, or register it. Do not use it until then.";
    }

    /** Why an item is closed and since when, as part of a sentence: without the last full stop. */
    static String closed(String id, UnitState state) {
        return id + " is " + StringUtils.removeEnd(state.words().strip(), ".");
    }
}
