package org.fumewarden.engine;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Figures;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Unit;

/** Words for facts: fills the sentence of a rule and describes premises. */
final class Sentences {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)(?:\\.([a-zA-Z]+))?}");

    /** Kept, since asking a record class for its parts copies them each time. */
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            return type.getRecordComponents();
        }
    };

    private final Vocabulary vocabulary;

    Sentences(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Fills {name} from the conclusion's parts or else the rule's bindings, and {binding.part} from a bound fact. */
    String fill(String template, Firing firing) {
        Map<String, Object> parts = parts(firing.conclusion());
        Matcher matcher = PLACEHOLDER.matcher(template);
        StringBuilder filled = new StringBuilder();
        while (matcher.find()) {
            Object value = value(matcher.group(1), matcher.group(2), parts, firing);
            matcher.appendReplacement(filled, Matcher.quoteReplacement(words(value)));
        }
        matcher.appendTail(filled);
        String sentence = filled.toString();
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private static Object value(String name, String part, Map<String, Object> parts, Firing firing) {
        if (part == null) {
            Object own = parts.get(name);
            return own != null ? own : firing.bindings().getOrDefault(name, "{" + name + "}");
        }
        Object bound = firing.bindings().get(name);
        return bound instanceof Record
                ? parts(bound).getOrDefault(part, "{" + name + "." + part + "}")
                : "{" + name + "." + part + "}";
    }

    /** The parts of a record by name, and what it can work out under the name {@code value}. */
    static Map<String, Object> parts(Object fact) {
        Map<String, Object> parts = new LinkedHashMap<>();
        if (fact instanceof org.fumewarden.model.Need need) {
            parts.put("value", need.value());
        }
        for (RecordComponent component : COMPONENTS.get(fact.getClass())) {
            try {
                parts.put(component.getName(), component.getAccessor().invoke(fact));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return parts;
    }

    /** One value in words. */
    String words(Object value) {
        if (value instanceof BigDecimal number) {
            return Figures.shown(number);
        }
        if (value instanceof Averaging averaging) {
            return averaging.words();
        }
        if (value instanceof Unit unit) {
            return unit.symbol();
        }
        if (value instanceof RowRef ref) {
            return ref.address();
        }
        if (value instanceof String text) {
            // Only an id has a name; a sentence keeps its hyphens.
            return text.indexOf(' ') < 0 ? vocabulary.name(text) : text;
        }
        if (value instanceof java.util.Optional<?> optional) {
            return optional.map(this::words).orElse("none");
        }
        return String.valueOf(value);
    }

    /** A fact in words: its kind and its parts, without its address. */
    String describe(Fact fact) {
        return parts(fact).entrySet().stream()
                .filter(e -> !(e.getValue() instanceof RowRef) && !e.getKey().equals("path"))
                .map(e -> e.getKey() + " " + plain(e.getValue()))
                .collect(Collectors.joining(", ", fact.getClass().getSimpleName() + ": ", ""));
    }

    private String plain(Object value) {
        return value instanceof String text ? text : words(value);
    }
}
