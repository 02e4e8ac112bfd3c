package org.fumewarden.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.Figures;
import org.fumewarden.whatif.Difference;
import org.fumewarden.whatif.Differences;

/** What moved between two pieces of advice: the answer first, then classes by their new verdict, questions, duties and sentences. */
public final class MovedText {
    private static final String CLASS = "respirator ";
    private static final String QUESTION = "question ";
    private static final String DUTY = "duty ";

    private final Advice before;
    private final Advice after;
    private final UnaryOperator<String> agents;
    private final List<Difference> all;
    private final StringBuilder out = new StringBuilder();

    private MovedText(Advice before, Advice after, UnaryOperator<String> agents) {
        this.before = before;
        this.after = after;
        this.agents = agents;
        this.all = Differences.between(before, after);
    }

    /**
     * What moved, as text.
     *
     * @param agents the name of an agent, mixture or policy by its id
     */
    public static String write(Advice before, Advice after, UnaryOperator<String> agents) {
        return new MovedText(before, after, agents).text();
    }

    private String text() {
        if (all.isEmpty()) {
            return "Nothing moves.\n";
        }
        answer(
                "State",
                "status",
                WhatIfText.shown(before.status().key()),
                WhatIfText.shown(after.status().key()));
        answer(
                "Minimum required protection factor",
                "required factor",
                factor(before.requiredFactor()),
                factor(after.requiredFactor()));
        answer("Recommended", "recommended", recommended(before), recommended(after));
        of("unit").forEach(d -> answer("Unit in use", "unit", d.before(), d.after()));
        classes();
        groups("Now to be answered", "No longer asked", QUESTION, "open");
        groups("New duty", "No longer a duty", DUTY, "");
        Stream.of("must not start or enter", "before any respirator", "filter", "caution", "disagreement")
                .forEach(this::sentences);
        return out.toString();
    }

    private List<Difference> of(String start) {
        return all.stream().filter(d -> d.what().startsWith(start)).toList();
    }

    private void answer(String head, String what, String was, String is) {
        for (Difference moved : all) {
            if (moved.what().equals(what)) {
                line("", head + ": " + (was.equals(is) ? is : was + " -> " + is));
                // Why a class is recommended stands with the classes.
                if (!what.equals("recommended")) {
                    because(moved.ceased(), moved.began());
                }
            }
        }
    }

    private String factor(RequiredFactor factor) {
        return factor.restsOnNothing()
                ? "nothing compared"
                : (factor.open() ? "open, at least " : "") + Figures.factor(factor.value()) + " ("
                        + agents.apply(factor.agent()) + ")";
    }

    private static String recommended(Advice advice) {
        return advice.recommended().map(Respirator::name).orElse("none");
    }

    private String device(String id) {
        return Stream.concat(after.respirators().stream(), before.respirators().stream())
                .filter(r -> r.deviceClass().equals(id))
                .map(Respirator::name)
                .findFirst()
                .orElse(id);
    }

    /** Classes that moved alike stand under one head, and what moved them is said once. */
    private void classes() {
        Map<String, List<Difference>> alike = new LinkedHashMap<>();
        for (Difference moved : of(CLASS)) {
            String was = WhatIfText.shown(StringUtils.substringBefore(moved.before(), ","));
            String is = WhatIfText.shown(StringUtils.substringBefore(moved.after(), ","));
            String head = was.equals(is) ? "Still " + is + ", on other terms" : "Now " + is + ", before " + was;
            alike.computeIfAbsent(head, h -> new ArrayList<>()).add(moved);
        }
        alike.forEach((head, moved) -> {
            line("", head + ":");
            moved.forEach(m -> line("  - ", device(m.what().substring(CLASS.length())) + terms(m)));
            because(
                    moved.stream()
                            .filter(m -> !serves(m.before()))
                            .flatMap(m -> m.ceased().stream())
                            .toList(),
                    moved.stream()
                            .filter(m -> !serves(m.after()))
                            .flatMap(m -> m.began().stream())
                            .toList());
        });
    }

    /** That nothing rules a class out needs no reason beside its verdict. */
    private static boolean serves(String side) {
        return side.startsWith("suitable") || side.startsWith("recommended");
    }

    /** Factor and filter, where they changed beside the verdict or with it. */
    private static String terms(Difference moved) {
        String was = StringUtils.substringAfter(moved.before(), ", ");
        String is = StringUtils.substringAfter(moved.after(), ", ");
        return was.equals(is) || was.isEmpty() || is.isEmpty() ? "" : ": " + was + " -> " + is;
    }

    private void groups(String come, String gone, String start, String there) {
        for (Difference moved : of(start)) {
            boolean now = there.isEmpty()
                    ? moved.before().equals("not due")
                    : moved.after().equals(there);
            List<Reason> reasons = now ? moved.began() : moved.ceased();
            String says = reasons.stream().map(WhatIfText::reason).findFirst().orElse(moved.what());
            line("", (now ? come : gone) + ": " + says);
        }
    }

    /** A sentence that only holds another figure now is said once. */
    private void sentences(String what) {
        List<Difference> moved = all.stream().filter(m -> m.what().equals(what)).toList();
        Set<String> now = moved.stream()
                .flatMap(m -> m.began().stream())
                .map(MovedText::withoutFigures)
                .collect(Collectors.toSet());
        for (Difference each : moved) {
            each.began().forEach(r -> line("", "Said now: " + WhatIfText.reason(r)));
            each.ceased().stream()
                    .filter(r -> !now.contains(withoutFigures(r)))
                    .forEach(r -> line("", "No longer said: " + WhatIfText.reason(r)));
        }
    }

    private static String withoutFigures(Reason reason) {
        return reason.rule() + reason.says().replaceAll("\\d+(?:\\.\\d+)?", "");
    }

    private void because(List<Reason> ceased, List<Reason> began) {
        ceased.stream().map(WhatIfText::reason).distinct().forEach(r -> line("    ", "no longer: " + r));
        began.stream().map(WhatIfText::reason).distinct().forEach(r -> line("    ", "now: " + r));
    }

    private void line(String lead, String text) {
        out.append(WhatIfText.line(lead, text));
    }
}
