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
    private final WhatIfText text;
    private final List<Difference> all;
    private final StringBuilder out = new StringBuilder();

    private MovedText(Advice before, Advice after, UnaryOperator<String> agents, WhatIfText text) {
        this.before = before;
        this.after = after;
        this.agents = agents;
        this.text = text;
        this.all = Differences.between(before, after);
    }

    /**
     * What moved, as text.
     *
     * @param agents the name of an agent, mixture or policy by its id
     */
    public static String write(Advice before, Advice after, UnaryOperator<String> agents, WhatIfText text) {
        return new MovedText(before, after, agents, text).text();
    }

    private String text() {
        if (all.isEmpty()) {
            return text.say("Nothing moves.") + "\n";
        }
        answer(
                "State",
                "status",
                text.shown(before.status().key()),
                text.shown(after.status().key()));
        answer(
                "Minimum required protection factor",
                "required factor",
                factor(before.requiredFactor()),
                factor(after.requiredFactor()));
        answer("Recommended", "recommended", recommended(before), recommended(after));
        of("unit").forEach(d -> answer("Unit in use", "unit", text.told(d.before()), text.told(d.after())));
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
                line("", text.say(head) + ": " + (was.equals(is) ? is : was + " -> " + is));
                // Why a class is recommended stands with the classes.
                if (!what.equals("recommended")) {
                    because(moved.ceased(), moved.began());
                }
            }
        }
    }

    private String factor(RequiredFactor factor) {
        String figure = text.told(Figures.factor(factor.value()));
        return factor.restsOnNothing()
                ? text.say("nothing compared")
                : (factor.open() ? text.say("open, at least {0}", figure) : figure) + " ("
                        + agents.apply(factor.agent()) + ")";
    }

    private String recommended(Advice advice) {
        return advice.recommended().map(text::device).orElse(text.say("none"));
    }

    private String device(String id) {
        return Stream.concat(after.respirators().stream(), before.respirators().stream())
                .filter(r -> r.deviceClass().equals(id))
                .map(text::device)
                .findFirst()
                .orElse(id);
    }

    /** Classes that moved alike stand under one head, and what moved them is said once. */
    private void classes() {
        Map<String, List<Difference>> alike = new LinkedHashMap<>();
        for (Difference moved : of(CLASS)) {
            String was = text.shown(StringUtils.substringBefore(moved.before(), ","));
            String is = text.shown(StringUtils.substringBefore(moved.after(), ","));
            String head = was.equals(is)
                    ? text.say("Still {0}, on other terms", is)
                    : text.say("Now {0}, before {1}", is, was);
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
    private String terms(Difference moved) {
        String was = StringUtils.substringAfter(moved.before(), ", ");
        String is = StringUtils.substringAfter(moved.after(), ", ");
        return was.equals(is) || was.isEmpty() || is.isEmpty() ? "" : ": " + text.told(was) + " -> " + text.told(is);
    }

    private void groups(String come, String gone, String start, String there) {
        for (Difference moved : of(start)) {
            boolean now = there.isEmpty()
                    ? moved.before().equals("not due")
                    : moved.after().equals(there);
            List<Reason> reasons = now ? moved.began() : moved.ceased();
            String says = reasons.stream().map(text::reason).findFirst().orElse(moved.what());
            line("", text.say(now ? come : gone) + ": " + says);
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
            each.began().forEach(r -> line("", text.say("Now on the sheet") + ": " + text.reason(r)));
            each.ceased().stream()
                    .filter(r -> !now.contains(withoutFigures(r)))
                    .forEach(r -> line("", text.say("On the sheet before only") + ": " + text.reason(r)));
        }
    }

    private static String withoutFigures(Reason reason) {
        return reason.rule() + reason.says().replaceAll("\\d+(?:\\.\\d+)?", "");
    }

    private void because(List<Reason> ceased, List<Reason> began) {
        ceased.stream().map(text::reason).distinct().forEach(r -> line("    ", text.say("no longer") + ": " + r));
        began.stream().map(text::reason).distinct().forEach(r -> line("    ", text.say("now") + ": " + r));
    }

    private void line(String lead, String words) {
        out.append(WhatIfText.line(lead, words));
    }
}
