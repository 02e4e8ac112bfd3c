package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The words by which files name the kinds of item and of entry. */
final class Kinds {
    private static final Map<Class<?>, String> ITEMS = words(Item.class);
    private static final Map<Class<?>, String> DETAILS = words(Details.class);

    private Kinds() {}

    static String of(Item item) {
        return ITEMS.get(item.getClass());
    }

    static String of(Details details) {
        return DETAILS.get(details.getClass());
    }

    /** The kinds of a family in the order of their declaration. */
    static List<JsonSubTypes.Type> of(Class<?> family) {
        return Arrays.asList(family.getAnnotation(JsonSubTypes.class).value());
    }

    private static Map<Class<?>, String> words(Class<?> family) {
        return of(family).stream().collect(Collectors.toMap(JsonSubTypes.Type::value, JsonSubTypes.Type::name));
    }
}
