package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.RuleConditionElement;
import org.drools.base.rule.constraint.Constraint;
import org.drools.modelcompiler.constraints.LambdaConstraint;
import org.kie.api.definition.rule.Rule;

/**
 * What a rule asks not to be there. No fact stands for it in a match, so that it is read from the rule itself.
 *
 * @param missing facts of which none, or none together, was found
 */
record Absence(List<Missing> missing) {
    private static final Pattern BINDING = Pattern.compile("\\$\\w+");

    /**
     * A kind of fact that was not found.
     *
     * @param kind simple name of its type
     * @param conditions what the rule asks of it, as the rule writes it
     */
    record Missing(String kind, List<String> conditions) {}

    /** All that a rule asks not to be there, in its order. */
    static List<Absence> of(Rule rule) {
        List<Absence> found = new ArrayList<>();
        find(((RuleImpl) rule).getLhs(), found);
        return List.copyOf(found);
    }

    private static void find(RuleConditionElement element, List<Absence> into) {
        if (element instanceof GroupElement group) {
            if (group.isNot()) {
                List<Missing> missing = new ArrayList<>();
                patterns(group, missing);
                // That one of several is there is compiled as that not all of them are missing: nothing is missing
                // then.
                if (!missing.isEmpty()) {
                    into.add(new Absence(List.copyOf(missing)));
                }
            } else {
                group.getChildren().forEach(child -> find(child, into));
            }
        }
    }

    /** The patterns below a group, but for those that it asks in turn not to be there. */
    private static void patterns(GroupElement group, List<Missing> into) {
        for (RuleConditionElement child : group.getChildren()) {
            if (child instanceof org.drools.base.rule.Pattern pattern) {
                into.add(missing(pattern));
            } else if (child instanceof GroupElement inner && !inner.isNot()) {
                patterns(inner, into);
            }
        }
    }

    /** What a pattern asks for, as the rule writes it. */
    static Missing missing(org.drools.base.rule.Pattern pattern) {
        return new Missing(kind(pattern), conditions(pattern));
    }

    private static String kind(org.drools.base.rule.Pattern pattern) {
        String name = pattern.getObjectType().getClassName();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static List<String> conditions(org.drools.base.rule.Pattern pattern) {
        List<String> conditions = new ArrayList<>();
        for (Constraint constraint : pattern.getConstraints()) {
            if (constraint instanceof LambdaConstraint lambda) {
                conditions.add(lambda.getPredicateInformation().getStringConstraint());
            }
        }
        return List.copyOf(conditions);
    }

    /**
     * The same with the values of one match in place of its bindings; what compares the missing with each other goes.
     *
     * @param bound the value of a binding, or null when the match has none of that name
     */
    Absence in(Function<String, Object> bound) {
        if (missing.stream().flatMap(m -> m.conditions().stream()).noneMatch(c -> c.contains("$"))) {
            return this;
        }
        return new Absence(missing.stream()
                .map(m -> new Missing(
                        m.kind(),
                        m.conditions().stream()
                                .map(condition -> bind(condition, bound))
                                .filter(condition -> !condition.contains("$"))
                                .toList()))
                .toList());
    }

    private static String bind(String condition, Function<String, Object> bound) {
        return BINDING.matcher(condition).replaceAll(name -> {
            Object value = bound.apply(name.group());
            return Matcher.quoteReplacement(value == null ? name.group() : spelled(value));
        });
    }

    /** A value as a rule would write it. */
    private static String spelled(Object value) {
        if (value instanceof Enum<?> constant) {
            return constant.getDeclaringClass().getSimpleName() + "." + constant.name();
        }
        if (value instanceof Collection<?> many) {
            return many.stream().map(Absence::spelled).collect(Collectors.joining(", "));
        }
        if (value instanceof Record) {
            return "\"that\"";
        }
        return value instanceof String ? "\"" + value + "\"" : String.valueOf(value);
    }
}
