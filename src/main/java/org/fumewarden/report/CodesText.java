package org.fumewarden.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Figures;

/** One task under several codes, side by side: status first, then the factor, then what is worn; what one code lacks comes last. */
public final class CodesText {
    private final List<Side> sides;
    private final UnaryOperator<String> agents;
    private final WhatIfText text;
    private final StringBuilder out = new StringBuilder();

    /** Advice under one code, and the classes of respirator that the code knows. */
    public record Side(Advice advice, List<DeviceClass> classes) {
        private String code() {
            return advice.codeUsed().id();
        }
    }

    private CodesText(List<Side> sides, UnaryOperator<String> agents, WhatIfText text) {
        this.sides = sides;
        this.agents = agents;
        this.text = text;
    }

    /**
     * The comparison as text.
     *
     * @param agents the name of an agent, mixture or policy by its id
     */
    public static String write(List<Side> sides, UnaryOperator<String> agents, WhatIfText text) {
        return new CodesText(sides, agents, text).text();
    }

    private String text() {
        out.append(sides.stream()
                        .map(s -> s.code() + ": "
                                + text.told(s.advice().codeUsed().name()))
                        .collect(Collectors.joining("; ")))
                .append("\n\n");
        line("State", a -> text.shown(a.status().key()));
        reasons("Do not start or enter", Advice::stops);
        reasons("Statements that exclude each other", Advice::conflicts);
        line("Minimum required protection factor", a -> factor(a.requiredFactor()));
        out.append("  ").append(ranked()).append('\n');
        line("Recommended", a -> a.recommended().map(this::words).orElse(text.say("none")));
        line(
                "Still to be answered",
                a -> a.questions().isEmpty()
                        ? text.say("nothing")
                        : a.questions().stream().map(text::ask).collect(Collectors.joining(" ")));
        List<String> alone = new ArrayList<>();
        classes(alone);
        duties(alone);
        if (!alone.isEmpty()) {
            out.append("\n")
                    .append(text.say("Annex: what is not in each of these codes"))
                    .append("\n");
            alone.forEach(a -> out.append(WhatIfText.line("  ", a)));
        }
        return out.toString();
    }

    private void line(String what, Function<Advice, String> said) {
        out.append(text.say(what)).append('\n');
        sides.forEach(s -> out.append(WhatIfText.line("  ", s.code() + ": " + said.apply(s.advice()))));
    }

    private void reasons(String what, Function<Advice, List<Reason>> part) {
        if (sides.stream().anyMatch(s -> !part.apply(s.advice()).isEmpty())) {
            line(
                    what,
                    a -> part.apply(a).isEmpty()
                            ? text.say("none")
                            : part.apply(a).stream()
                                    .map(Reason::says)
                                    .map(text::told)
                                    .distinct()
                                    .collect(Collectors.joining(" ")));
        }
    }

    private String factor(RequiredFactor factor) {
        String value = text.told(Figures.factor(factor.value()));
        return factor.open()
                ? text.say("open, at least {0} so far", value)
                : factor.restsOnNothing()
                        ? text.say("none: nothing was compared with a limit")
                        : value + " (" + agents.apply(factor.agent()) + ")";
    }

    /** Which code asks for most; nothing is ranked while a factor is open or rests on nothing. */
    private String ranked() {
        List<String> unsure = sides.stream()
                .filter(s -> s.advice().requiredFactor().open()
                        || s.advice().requiredFactor().restsOnNothing())
                .map(Side::code)
                .toList();
        if (!unsure.isEmpty()) {
            return text.say(
                    "The factors cannot be ranked: under {0} the factor is not settled.", String.join(", ", unsure));
        }
        var most = sides.stream()
                .map(s -> s.advice().requiredFactor().value())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        List<String> highest = sides.stream()
                .filter(s -> s.advice().requiredFactor().value().compareTo(most) == 0)
                .map(Side::code)
                .toList();
        return (highest.size() == sides.size()
                        ? text.say("All ask for the same factor.")
                        : text.say(
                                highest.size() == 1
                                        ? "{0} asks for the higher factor."
                                        : "{0} ask for the higher factor.",
                                String.join(", ", highest)))
                + " "
                + text.say("A higher factor alone does not make a code the stricter one. None is chosen for you.");
    }

    /** Classes of one kind stand together, whatever a code calls them. */
    private void classes(List<String> alone) {
        Map<String, Map<String, List<String>>> kinds = new LinkedHashMap<>();
        for (Side side : sides) {
            Map<String, Respirator> said = side.advice().respirators().stream()
                    .collect(Collectors.toMap(Respirator::deviceClass, Function.identity(), (a, b) -> a));
            side.classes().stream()
                    .filter(c -> said.containsKey(c.id()))
                    .sorted(Comparator.comparing(DeviceClass::order))
                    .forEach(c -> kinds.computeIfAbsent(kind(c), k -> new LinkedHashMap<>())
                            .computeIfAbsent(side.code(), k -> new ArrayList<>())
                            .add(words(said.get(c.id()))));
        }
        out.append("\n").append(text.say("Respirators of one kind")).append("\n");
        Map<String, List<String>> lacking = new TreeMap<>();
        kinds.forEach((kind, byCode) -> {
            if (byCode.size() < sides.size()) {
                String where = String.join(", ", byCode.keySet());
                lacking.computeIfAbsent(where, w -> new ArrayList<>()).add(kind);
                return;
            }
            out.append("  ").append(kind).append('\n');
            sides.forEach(s ->
                    out.append(WhatIfText.line("    ", s.code() + ": " + String.join("; ", byCode.get(s.code())))));
        });
        lacking.forEach(
                (where, what) -> alone.add(text.say("Respirators in {0} alone: {1}.", where, String.join("; ", what))));
    }

    private String kind(DeviceClass c) {
        String supply =
                switch (c.supply()) {
                    case "filter" -> c.powered() ? "powered filter device" : "filter device, not powered";
                    case "airline" -> "airline";
                    case "fresh-air-hose" -> "fresh air hose";
                    default -> "self-contained";
                };
        String pressure = c.pressure().replace('-', ' ') + (c.pressure().equals("continuous") ? " flow" : " pressure");
        String covers = c.seal().equals("loose")
                ? "loose over the " + c.covers().replace("nose-mouth", "nose and mouth")
                : c.covers().equals("nose-mouth")
                        ? "half mask"
                        : c.covers().equals("face") ? "full mask" : "tight over the " + c.covers();
        String gas = c.filters() && c.particle().equals("none") ? "gas alone" : "";
        return Stream.of(supply, c.filters() ? "" : pressure, covers, gas)
                .filter(part -> !part.isEmpty())
                .map(text::say)
                .collect(Collectors.joining(", "));
    }

    private String words(Respirator respirator) {
        return text.device(respirator) + ": " + text.shown(respirator.verdict().key())
                + respirator
                        .factor()
                        .map(f -> ", "
                                + text.told("factor " + f.stripTrailingZeros().toPlainString()))
                        .orElse("");
    }

    private void duties(List<String> alone) {
        Map<String, Set<String>> owed = new TreeMap<>();
        for (Side side : sides) {
            side.advice().checks().stream().map(Check::id).forEach(id -> owed.computeIfAbsent(id, i -> new TreeSet<>())
                    .add(side.code()));
        }
        long everywhere =
                owed.values().stream().filter(c -> c.size() == sides.size()).count();
        out.append("\n")
                .append(text.say("Duties that all these codes share: {0}.", everywhere))
                .append("\n");
        for (Side side : sides) {
            long own = side.advice().checks().stream()
                    .filter(c -> owed.get(c.id()).size() < sides.size())
                    .count();
            if (own > 0) {
                alone.add(text.say(
                        "Duties in {0}, not in all: {1}; advise --code {0} --detail names them.", side.code(), own));
            }
        }
    }
}
