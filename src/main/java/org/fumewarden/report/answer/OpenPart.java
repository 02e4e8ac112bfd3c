package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Suitability;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.NoneStated;
import org.fumewarden.model.StatedLimit;
import org.fumewarden.model.Stop;
import org.fumewarden.model.Trait;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** What is still to be answered or measured. Nothing is left out: levels that are missing stand together. */
record OpenPart(Advice advice, Spoken spoken) {
    /** Questions that are asked in whole; the others stand together by what they are about. */
    static final int ASKED = 6;

    static final int FEWEST = 3;
    private static final Set<String> OF_WEARER =
            Set.of("facial-hair", "spectacles", "fit-tested", "medically-cleared", "trained");
    private static final String DANGEROUS = "may-be-dangerous";

    Optional<Part> write(int inWhole) {
        List<Line> lines = new ArrayList<>();
        Map<String, List<String>> levels = new LinkedHashMap<>();
        Map<String, List<String>> proofs = new LinkedHashMap<>();
        Map<String, List<String>> measured = new LinkedHashMap<>();
        Map<String, Set<String>> limits = new TreeMap<>();
        List<OpenQuestion> others = new ArrayList<>();
        for (OpenQuestion question : asked()) {
            String[] parts = question.question().split("\\.");
            if (parts.length == 3 && parts[0].equals("exposures") && parts[2].equals("limit")) {
                limits.computeIfAbsent(searched(parts[1]) ? "open.set" : "open.look-up", k -> new LinkedHashSet<>())
                        .add(spoken.agent(parts[1]) + times(parts[1]));
            } else if (parts.length == 3 && parts[0].equals("exposures")) {
                (byProofOnly(parts[1]) ? proofs : byMeasuringOnly(parts[1]) ? measured : levels)
                        .computeIfAbsent(parts[1], a -> new ArrayList<>())
                        .add(spoken.say("open." + parts[2]));
            } else {
                others.add(question);
            }
        }
        others.stream()
                .limit(inWhole)
                .map(q -> spoken.words().sayOr("ask." + q.question(), spoken.told(q.ask())) + about(q) + decides(q))
                .forEach(q -> lines.add(new Line.Says(Sign.OPEN, q)));
        if (others.size() > inWhole) {
            lines.add(new Line.Says(
                    Sign.OPEN,
                    spoken.say("open.also") + ":",
                    others.stream().skip(inWhole).map(this::shortly).collect(Collectors.joining("; ")) + "."));
        }
        missing("open.measure", levels, lines);
        missing("open.prove", proofs, lines);
        missing("open.measure-only", measured, lines);
        limits.forEach((key, agents) ->
                lines.add(new Line.Says(Sign.OPEN, spoken.say(key) + ":", String.join("; ", agents) + ".")));
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("open", spoken.say("page.open"), lines));
    }

    private boolean searched(String agent) {
        return advice.inputs().stream()
                .anyMatch(i -> i instanceof NoneStated none && none.agent().equals(agent));
    }

    /** The averaging times of the stated levels that no stated limit stands beside. */
    private String times(String agent) {
        Set<Averaging> held = advice.inputs().stream()
                .filter(i -> i instanceof StatedLimit l && l.agent().equals(agent))
                .map(i -> ((StatedLimit) i).averaging())
                .collect(Collectors.toSet());
        String times = advice.inputs().stream()
                .filter(i -> i instanceof Exposure x && x.agent().equals(agent) && !held.contains(x.averaging()))
                .map(i -> spoken.say("open." + ((Exposure) i).averaging().key()))
                .distinct()
                .collect(Collectors.joining(", "));
        return times.isEmpty() ? "" : " (" + times + ")";
    }

    /**
     * Nobody is kept busy with answers that change nothing: of a rescue, of a wearer who may not do the work anyway, or of
     * levels where the work itself is stopped.
     */
    private List<OpenQuestion> asked() {
        if (!WearPart.ofTheTeam(advice).isEmpty() || new Stopped(advice).byWearer()) {
            return List.of();
        }
        boolean stopped = !advice.trail().all(Stop.class).isEmpty();
        return advice.questions().stream()
                .filter(q -> !stopped || !ofTheAir(q) && !OF_WEARER.contains(q.question()))
                .toList();
    }

    private static boolean ofTheAir(OpenQuestion question) {
        return question.question().startsWith("exposures.")
                || question.question().equals("danger-excluded");
    }

    /** The classes on which a question alone decides, beside one that is suitable whatever the answer. */
    private String decides(OpenQuestion question) {
        if (advice.recommended().isEmpty()) {
            return "";
        }
        Set<String> doubted = advice.trail().all(Doubt.class).stream()
                .filter(d -> d.question().equals(question.question()))
                .map(Doubt::deviceClass)
                .collect(Collectors.toSet());
        List<String> names = advice.with(Suitability.UNDECIDED).stream()
                .filter(r -> doubted.contains(r.deviceClass()))
                .map(r -> spoken.device(r.deviceClass(), r.name()))
                .toList();
        if (names.isEmpty()) {
            return "";
        }
        String more = names.size() > 1 ? "; " + spoken.say("wear.more", names.size() - 1) : "";
        return " " + spoken.say("open.decides", names.get(0) + more);
    }

    /** Which gases a question is about that names none. */
    private String about(OpenQuestion question) {
        String gases = advice.trail().all(Trait.class).stream()
                .filter(t -> question.question().equals("danger-excluded")
                        && t.circumstance().equals(DANGEROUS))
                .map(t -> spoken.agent(t.value()))
                .distinct()
                .collect(Collectors.joining(", "));
        return gases.isEmpty() ? "" : " (" + gases + ")";
    }

    private void missing(String key, Map<String, List<String>> levels, List<Line> lines) {
        if (!levels.isEmpty()) {
            lines.add(new Line.Says(
                    Sign.OPEN,
                    spoken.say(key) + ":",
                    levels.entrySet().stream()
                                    .map(e -> spoken.agent(e.getKey()) + " (" + String.join(", ", e.getValue()) + ")")
                                    .collect(Collectors.joining("; "))
                            + "."));
        }
    }

    /** True for an agent of which the code takes no judgement. */
    private boolean byProofOnly(String agent) {
        return advice.trail().all(Caution.class).contains(new Caution("objective-data-only-" + agent));
    }

    /** True for an agent whose calculation was set aside. */
    private boolean byMeasuringOnly(String agent) {
        return advice.trail().all(Caution.class).contains(new Caution("calculation-set-aside-" + agent));
    }

    private String shortly(OpenQuestion question) {
        return spoken.words()
                .sayOr(
                        "asked." + question.question(),
                        spoken.told(spoken.vocabulary().name(question.question())));
    }
}
