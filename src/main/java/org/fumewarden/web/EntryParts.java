package org.fumewarden.web;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Result;

/** What an entry says, field by field in the order of its form; fields left empty are left out. */
final class EntryParts {
    private static final Set<String> HEALTH = Set.of("result", "limits", "entry", "reason");

    private EntryParts() {}

    /** What the page shows: of a medical only whether the person is fit, and with which limits on use. */
    static Map<String, String> shown(Details details) {
        Map<String, String> parts = of(details);
        if (details.serves().startsWith("medical")) {
            parts.keySet().retainAll(HEALTH);
        }
        return parts;
    }

    static Map<String, String> of(Details details) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (RecordComponent component : details.getClass().getRecordComponents()) {
            Object value = value(component, details);
            if (value instanceof Optional<?> maybe && maybe.orElse(null) instanceof Details instead) {
                parts.putAll(of(instead));
                continue;
            }
            String words = words(value);
            if (!words.isEmpty()) {
                parts.put(component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT), words);
            }
        }
        return parts;
    }

    private static Object value(RecordComponent component, Details details) {
        try {
            return component.getAccessor().invoke(details);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String words(Object value) {
        if (value instanceof Optional<?> maybe) {
            return maybe.map(EntryParts::words).orElse("");
        }
        if (value instanceof List<?> list) {
            return list.stream().map(EntryParts::words).collect(Collectors.joining("; "));
        }
        if (value instanceof Details.Point point) {
            return point.id() + ": " + point.result().key()
                    + (point.remark().isEmpty() ? "" : " (" + point.remark() + ")");
        }
        if (value instanceof Item item) {
            return item.id() + ", " + item.label();
        }
        if (value instanceof Result result) {
            return result.key();
        }
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return String.valueOf(value);
    }
}
