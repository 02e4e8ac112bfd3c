package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.codes.Fault;

/** Makes items and details from named values in words, as they come from a prompt, a flag or a file. */
public final class Forms {
    /**
     * One field of a form.
     *
     * @param kind text, number, day, yes-or-no, result, words, or points
     * @param needed true when a form without it is refused
     */
    public record Field(String name, String kind, boolean needed) {
        /** The kinds of item about which it is asked; none when it is asked about all. */
        public Set<ItemKind> concerns() {
            return CONCERNS.getOrDefault(name, Set.of());
        }

        /** Whether to ask for it about an item of this kind. */
        public boolean concerns(ItemKind item) {
            return concerns().isEmpty() || concerns().contains(item);
        }
    }

    /** Fields that would only puzzle whoever fills in the form of another kind of item. Any form still takes them. */
    private static final Map<String, Set<ItemKind>> CONCERNS = Map.of(
            "battery-condition", Set.of(ItemKind.UNIT),
            "cylinder-pressure", Set.of(ItemKind.UNIT, ItemKind.AIR_SUPPLY),
            "cylinder-full-pressure", Set.of(ItemKind.UNIT, ItemKind.AIR_SUPPLY),
            "operating-conditions", Set.of(ItemKind.PLANT),
            "intended-performance", Set.of(ItemKind.PLANT),
            "performance-met", Set.of(ItemKind.PLANT));

    private static final Set<String> NOT_BY_HAND = Set.of("registration", "correction");
    private static final Set<String> NEEDED = Set.of(
            "id",
            "name",
            "model",
            "type",
            "employer",
            "address",
            "result",
            "condition",
            "method",
            "topic",
            "content",
            "work",
            "part",
            "reason",
            "task");

    private Forms() {}

    /** The kinds of item that can be registered. */
    public static List<String> itemKinds() {
        return kinds(Item.class);
    }

    /** The kinds of entry that can be logged. */
    public static List<String> entryKinds() {
        return kinds(Details.class).stream()
                .filter(k -> !NOT_BY_HAND.contains(k))
                .toList();
    }

    private static List<String> kinds(Class<?> family) {
        return Kinds.of(family).stream().map(JsonSubTypes.Type::name).toList();
    }

    /** The fields of an item, without its facts. */
    public static List<Field> itemFields(String kind) {
        return fields(Item.class, kind);
    }

    /** The fields of an entry, without item, day and person. */
    public static List<Field> entryFields(String kind) {
        return fields(Details.class, kind);
    }

    private static List<Field> fields(Class<?> family, String kind) {
        return Arrays.stream(type(family, kind).getRecordComponents())
                .filter(c -> !c.getName().equals("facts"))
                .map(Forms::field)
                .toList();
    }

    private static Class<?> type(Class<?> family, String kind) {
        return Kinds.of(family).stream()
                .filter(t -> t.name().equals(kind))
                .findFirst()
                .map(JsonSubTypes.Type::value)
                .orElseThrow(() -> StoreException.about(
                        "kind", "cannot be \"" + kind + "\".", String.join(", ", kinds(family)) + "."));
    }

    private static Field field(RecordComponent component) {
        String name = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
        String described = component.getGenericType().getTypeName();
        boolean describing = name.equals("description") && component.getDeclaringRecord() != Item.Mask.class;
        return new Field(name, kind(component.getGenericType(), described), NEEDED.contains(name) || describing);
    }

    private static String kind(Type type, String described) {
        if (described.endsWith("Details$Point>")) {
            return "points";
        }
        if (type == boolean.class || described.contains("java.lang.Boolean")) {
            return "yes-or-no";
        }
        if (type == Result.class) {
            return "result";
        }
        if (described.contains("BigDecimal")) {
            return "number";
        }
        if (described.contains("LocalDate")) {
            return "day";
        }
        return type instanceof ParameterizedType && described.startsWith("java.util.List") ? "words" : "text";
    }

    /**
     * An item.
     *
     * @param values by field name; blank counts as left out
     * @param facts circumstances of the duty vocabulary
     */
    public static Item item(String kind, Map<String, String> values, Map<String, List<String>> facts) {
        ObjectNode node = node(kind, values, itemFields(kind));
        node.set("facts", Canon.json().valueToTree(facts));
        return made(node, Item.class);
    }

    /** What an entry says. */
    public static Details details(String kind, Map<String, String> values) {
        return made(node(kind, values, entryFields(kind)), Details.class);
    }

    /** The values of an entry by field name, in words; what is empty is left out. The way back from {@link #details}. */
    public static Map<String, String> values(Details details) {
        return words(Canon.json().valueToTree(details));
    }

    /** The values of an item by field name, in words, without its facts. */
    public static Map<String, String> values(Item item) {
        return words(Canon.json().valueToTree(item));
    }

    private static Map<String, String> words(JsonNode node) {
        Map<String, String> values = new TreeMap<>();
        node.fields().forEachRemaining(f -> {
            if (f.getValue().isValueNode()) {
                values.put(f.getKey(), f.getValue().asText());
            }
        });
        return values;
    }

    private static <T> T made(ObjectNode node, Class<T> family) {
        return Canon.read(node.toString(), family);
    }

    private static ObjectNode node(String kind, Map<String, String> values, List<Field> fields) {
        ObjectNode node = Canon.json().createObjectNode();
        node.put("kind", kind);
        List<String> missing = new ArrayList<>();
        for (Field field : fields) {
            String value = values.getOrDefault(field.name(), "").strip();
            if (!value.isEmpty()) {
                put(node, field, value);
            } else if (field.needed()) {
                missing.add(field.name());
            }
        }
        if (!missing.isEmpty()) {
            String more = String.join(", ", missing.subList(1, missing.size()));
            throw StoreException.about(
                            missing.get(0),
                            "is missing for " + kind + (more.isEmpty() ? "." : ", and so is " + more + "."),
                            "add " + missing.stream().map(m -> m + "=...").collect(Collectors.joining(" ")))
                    .as(Fault.MISSING);
        }
        return node;
    }

    private static void put(ObjectNode node, Field field, String value) {
        switch (field.kind()) {
            case "yes-or-no" -> node.put(field.name(), yes(field.name(), value));
            case "number" -> node.put(field.name(), number(field.name(), value));
            case "day" -> node.put(field.name(), day(field.name(), value).toString());
            case "result" ->
                node.put(
                        field.name(),
                        Given.one(Result.class, field.name(), value).key());
            case "words" -> node.set(field.name(), Canon.json().valueToTree(words(value)));
            case "points" -> node.set(field.name(), Canon.json().valueToTree(points(value)));
            default -> node.put(field.name(), Given.composed(value));
        }
    }

    private static boolean yes(String name, String value) {
        return switch (value.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default ->
                throw StoreException.about(name, "cannot be \"" + value + "\".", "write yes or no.")
                        .as(Fault.CHOICE);
        };
    }

    private static String number(String name, String value) {
        if (!value.matches("[+-]?[0-9]{1,12}(\\.[0-9]{1,12})?")) {
            throw StoreException.about(
                            name,
                            "must be a number but is \"" + value + "\".",
                            "write it with digits and a point, such as 160 or 0.5, without a unit.")
                    .as(Fault.NUMBER);
        }
        return value.startsWith("+") ? value.substring(1) : value;
    }

    /** A day, or a month that counts to its last day. */
    public static LocalDate day(String name, String value) {
        try {
            return value.length() == "2026-03".length() ? Days.endOf(YearMonth.parse(value)) : LocalDate.parse(value);
        } catch (DateTimeException e) {
            throw StoreException.about(
                            name,
                            "must be a day but is \"" + value + "\".",
                            "write it as year-month-day, such as 2026-03-02.")
                    .as(Fault.DAY);
        }
    }

    /** The number of an entry. */
    public static long entryNumber(String name, String value) {
        if (value.matches("[0-9]{1,15}")) {
            return Long.parseLong(value);
        }
        throw StoreException.about(
                name,
                "is no number of an entry: \"" + value + "\".",
                "see log --list ITEM, or the history on the page.");
    }

    private static List<String> words(String value) {
        return Arrays.stream(value.split("[,;]"))
                .map(String::strip)
                .filter(w -> !w.isEmpty())
                .toList();
    }

    private static List<Details.Point> points(String value) {
        return words(value).stream()
                .map(p -> p.split(":", 3))
                .map(p -> new Details.Point(
                        p[0],
                        Given.one(Result.class, "result of point " + p[0], p.length > 1 ? p[1].strip() : ""),
                        p.length > 2 ? p[2] : ""))
                .toList();
    }
}
