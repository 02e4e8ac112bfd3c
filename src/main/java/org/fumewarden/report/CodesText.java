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
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Figures;

/** One task under several codes, side by side: status first, then the factor, then what is worn; what one code lacks comes last. */
public final class CodesText {
    private final List<Side> sides;
    private final UnaryOperator<String> agents;
    private final StringBuilder out = new StringBuilder();

    /** Advice under one code, and the classes of respirator that the code knows. */
    public record Side(Advice advice, List<DeviceClass> classes) {
        private String code() {
            return advice.codeUsed().id();
        }
    }

    private CodesText(List<Side> sides, UnaryOperator<String> agents) {
        this.sides = sides;
        this.agents = agents;
    }

    /**
     * The comparison as text.
     *
     * @param agents the name of an agent, mixture or policy by its id
     */
    public static String write(List<Side> sides, UnaryOperator<String> agents) {
        return new CodesText(sides, agents).text();
    }

    private String text() {
        out.append(sides.stream()
                        .map(s -> s.code() + ": " + s.advice().codeUsed().name())
                        .collect(Collectors.joining("; ")))
                .append("\n\n");
        line("State", a -> WhatIfText.shown(a.status().key()));
        reasons("Do not start or enter", Advice::stops);
        reasons("Statements that exclude each other", Advice::conflicts);
        line("Minimum required protection factor", a -> factor(a.requiredFactor()));
        out.append("  ").append(ranked()).append('\n');
        line("Recommended", a -> a.recommended().map(CodesText::words).orElse("none"));
        line(
                "Still to be answered",
                a -> a.questions().isEmpty()
                        ? "nothing"
                        : a.questions().stream().map(OpenQuestion::ask).collect(Collectors.joining(" ")));
        List<String> alone = new ArrayList<>();
        classes(alone);
        duties(alone);
        if (!alone.isEmpty()) {
            out.append("\nAnnex: what is not in each of these codes\n");
            alone.forEach(a -> out.append(WhatIfText.line("  ", a)));
        }
        return out.toString();
    }

    private void line(String what, Function<Advice, String> said) {
        out.append(what).append('\n');
        sides.forEach(s -> out.append(WhatIfText.line("  ", s.code() + ": " + said.apply(s.advice()))));
    }

    private void reasons(String what, Function<Advice, List<Reason>> part) {
        if (sides.stream().anyMatch(s -> !part.apply(s.advice()).isEmpty())) {
            line(
                    what,
                    a -> part.apply(a).isEmpty()
                            ? "none"
                            : part.apply(a).stream()
                                    .map(Reason::says)
                                    .distinct()
                                    .collect(Collectors.joining(" ")));
        }
    }

    private String factor(RequiredFactor factor) {
        String value = Figures.shown(factor.value());
        return factor.open()
                ? "open, at least " + value + " so far"
                : factor.restsOnNothing()
                        ? "none: nothing was compared with a limit"
                        : value + " for " + agents.apply(factor.agent());
    }

    /** Which code asks for most; nothing is ranked while a factor is open or rests on nothing. */
    private String ranked() {
        List<String> unsure = sides.stream()
                .filter(s -> s.advice().requiredFactor().open()
                        || s.advice().requiredFactor().restsOnNothing())
                .map(Side::code)
                .toList();
        if (!unsure.isEmpty()) {
            return "The factors cannot be ranked: under " + String.join(", ", unsure) + " the factor is not settled.";
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
                        ? "All ask for the same factor"
                        : String.join(" and ", highest) + (highest.size() == 1 ? " asks" : " ask")
                                + " for the higher factor")
                + ". A higher factor alone does not make a code the stricter one. None is chosen for you.";
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
        out.append("\nRespirators of one kind\n");
        Map<String, List<String>> lacking = new TreeMap<>();
        kinds.forEach((kind, byCode) -> {
            if (byCode.size() < sides.size()) {
                String where = String.join(" and ", byCode.keySet());
                lacking.computeIfAbsent(where, w -> new ArrayList<>()).add(kind);
                return;
            }
            out.append("  ").append(kind).append('\n');
            sides.forEach(s ->
                    out.append(WhatIfText.line("    ", s.code() + ": " + String.join("; ", byCode.get(s.code())))));
        });
        lacking.forEach(
                (where, what) -> alone.add("Respirators in " + where + " alone: " + String.join("; ", what) + "."));
    }

    private static String kind(DeviceClass c) {
        String supply =
                switch (c.supply()) {
                    case "filter" -> c.powered() ? "powered filter device" : "filter device, not powered";
                    case "airline" -> "airline";
                    case "fresh-air-hose" -> "fresh air hose";
                    default -> "self-contained";
                };
        String pressure = c.filters()
                ? ""
                : ", " + c.pressure().replace('-', ' ') + (c.pressure().equals("continuous") ? " flow" : " pressure");
        String covers = c.seal().equals("loose")
                ? c.covers().equals("head")
                        ? "loose over the head"
                        : "loose over the " + c.covers().replace("nose-mouth", "nose and mouth")
                : c.covers().equals("nose-mouth")
                        ? "half mask"
                        : c.covers().equals("face") ? "full mask" : "tight over the " + c.covers();
        String gas = c.filters() && c.particle().equals("none") ? ", gas alone" : "";
        return supply + pressure + ", " + covers + gas;
    }

    private static String words(Respirator respirator) {
        return respirator.name() + ": " + WhatIfText.shown(respirator.verdict().key())
                + respirator
                        .factor()
                        .map(f -> ", factor " + f.stripTrailingZeros().toPlainString())
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
        out.append("\nDuties that all these codes share: ").append(everywhere).append(".\n");
        for (Side side : sides) {
            long own = side.advice().checks().stream()
                    .filter(c -> owed.get(c.id()).size() < sides.size())
                    .count();
            if (own > 0) {
                alone.add("Duties in " + side.code() + ", not in all: " + own + "; advise --code " + side.code()
                        + " --detail names them.");
            }
        }
    }
}
