package org.fumewarden.engine;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Rule;
import org.drools.model.constraints.AbstractSingleConstraint;
import org.drools.model.patterns.AccumulatePatternImpl;
import org.drools.model.patterns.PatternImpl;

/**
 * How much work a spoilt rule may make. A flipped comparison or a deleted condition can join every row with every other row; the engine would go on for
 * hours before the first firing. Comparisons and firings are counted, not seconds, so that the verdict is the same on every machine.
 */
public final class Budget {
    private static long left = Long.MAX_VALUE;

    private Budget() {}

    /** Allows so many comparisons between facts and firings from now on. */
    public static void allow(long steps) {
        left = steps;
    }

    /** How many are left. */
    public static long left() {
        return left;
    }

    /** Spends one. A spoilt rule calls this in its consequence. */
    public static void spend() {
        left--;
        if (left < 0) {
            throw new IllegalStateException("the spoilt rule makes more work than any rule does");
        }
    }

    /** Makes every comparison between two or three facts of a rule spend one. */
    static Rule counted(Rule rule) {
        count((Condition) rule.getView());
        return rule;
    }

    private static void count(Condition condition) {
        if (condition instanceof PatternImpl<?> pattern) {
            count(pattern.getConstraint());
        }
        if (condition instanceof AccumulatePatternImpl<?> accumulate) {
            count(accumulate.getCondition());
        }
        condition.getSubConditions().forEach(Budget::count);
    }

    private static void count(Constraint constraint) {
        if (constraint instanceof AbstractSingleConstraint single && single.getVariables().length > 1) {
            exchange(single);
        } else if (constraint != null) {
            constraint.getChildren().forEach(Budget::count);
        }
    }

    /** The classes of the compiled model are closed, so the comparison is exchanged where it lies. */
    private static void exchange(AbstractSingleConstraint constraint) {
        try {
            Object holder = field(constraint).get(constraint);
            Field inner = field(holder);
            Object compared = inner.get(holder);
            if (!Proxy.isProxyClass(compared.getClass())) {
                inner.set(
                        holder,
                        Proxy.newProxyInstance(
                                compared.getClass().getClassLoader(),
                                compared.getClass().getInterfaces(),
                                (proxy, method, arguments) -> counted(compared, method, arguments)));
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the compiled model is laid out in another way", e);
        }
    }

    private static Object counted(Object compared, Method method, Object[] arguments)
            throws ReflectiveOperationException {
        if (method.getName().equals("test")) {
            spend();
        }
        return method.invoke(compared, arguments);
    }

    private static Field field(Object holder) throws NoSuchFieldException {
        Field field = holder.getClass().getDeclaredField("predicate");
        field.setAccessible(true);
        return field;
    }
}
