package org.fumewarden.engine;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Need;

/**
 * One part of a kind of fact.
 *
 * @param name as the record names it, or {@code value} for what a need works out
 * @param words the name in words
 */
record FactPart(String name, String words, Method reader) {
    /** Kept, since asking a record class for its parts copies them each time. */
    private static final ClassValue<List<FactPart>> PARTS = new ClassValue<>() {
        @Override
        protected List<FactPart> computeValue(Class<?> type) {
            try {
                return find(type);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }
    };

    /** The parts of a record in its order, after the value of a need. */
    static List<FactPart> of(Object record) {
        return PARTS.get(record.getClass());
    }

    /** What a record holds under a name. */
    static Optional<Object> in(Object record, String name) {
        for (FactPart part : of(record)) {
            if (part.name.equals(name)) {
                return Optional.of(part.read(record));
            }
        }
        return Optional.empty();
    }

    /** This part of a record. */
    Object read(Object record) {
        try {
            return reader.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A record with all its parts exactly, as the language spells records, but without the detour over a format. */
    static String spelled(Object record) {
        StringBuilder text = new StringBuilder(record.getClass().getSimpleName()).append('[');
        String between = "";
        for (FactPart part : of(record)) {
            text.append(between).append(part.name).append('=').append(part.read(record));
            between = ", ";
        }
        return text.append(']').toString();
    }

    private static List<FactPart> find(Class<?> type) throws NoSuchMethodException {
        List<FactPart> parts = new ArrayList<>();
        if (type == Need.class) {
            parts.add(new FactPart("value", "value", Need.class.getMethod("value")));
        }
        for (RecordComponent component : type.getRecordComponents()) {
            String name = component.getName();
            parts.add(new FactPart(name, AbsenceWords.kebab(name).replace('-', ' '), component.getAccessor()));
        }
        return List.copyOf(parts);
    }
}
