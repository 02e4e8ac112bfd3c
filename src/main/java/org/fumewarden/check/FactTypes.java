package org.fumewarden.check;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Row;

/** The types of fact that rules may name, by their simple names. */
final class FactTypes {
    private static final Map<String, Class<?>> TYPES = new TreeMap<>();

    /** The parts of a type that are words. */
    private static final ClassValue<List<Method>> WORDS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(c -> c.getType() == String.class)
                    .map(RecordComponent::getAccessor)
                    .toList();
        }
    };

    static {
        for (Class<?> kind : List.of(Input.class, Row.class, Conclusion.class)) {
            for (Class<?> type : kind.getPermittedSubclasses()) {
                TYPES.put(type.getSimpleName(), type);
            }
        }
    }

    private FactTypes() {}

    static Optional<Class<?>> named(String name) {
        return Optional.ofNullable(TYPES.get(name));
    }

    static boolean isConclusion(String name) {
        return named(name).filter(Conclusion.class::isAssignableFrom).isPresent();
    }

    static boolean isRow(String name) {
        return named(name).filter(Row.class::isAssignableFrom).isPresent();
    }

    /** The names of the parts of a fact, in the order of its constructor. */
    static List<String> parts(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
    }

    /** True when a sentence may name the part. */
    static boolean hasPart(Class<?> type, String part) {
        return parts(type).contains(part)
                || type == Need.class && part.equals("value")
                || type == Ratio.class && part.equals(Ratio.COMPARED);
    }

    /** The words that a fact holds, by part. */
    static Map<String, String> words(Fact fact) {
        Map<String, String> words = new TreeMap<>();
        for (Method part : WORDS.get(fact.getClass())) {
            try {
                words.put(part.getName(), (String) part.invoke(fact));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return words;
    }
}
