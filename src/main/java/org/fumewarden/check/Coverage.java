package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.WrittenRule;

/**
 * Which rules the scenarios reach.
 *
 * @param rules how many rules there are
 * @param neverFired rules that fire in no scenario
 * @param neverSilent rules that no scenario names as silent and finds so
 */
record Coverage(int rules, List<WrittenRule> neverFired, List<WrittenRule> neverSilent) {

    static Coverage of(List<WrittenRule> rules, List<ScenarioRun> runs) {
        Set<String> fired = new TreeSet<>();
        Set<String> silent = new TreeSet<>();
        for (ScenarioRun run : runs) {
            Set<String> firedHere = run.fired();
            fired.addAll(firedHere);
            run.silent().stream().filter(r -> !firedHere.contains(r)).forEach(silent::add);
        }
        return new Coverage(
                rules.size(),
                rules.stream().filter(r -> !fired.contains(r.id())).toList(),
                rules.stream().filter(r -> !silent.contains(r.id())).toList());
    }

    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        neverFired.forEach(r -> problems.add(r.problem(
                "fires in no scenario.", "add scenarios/" + r.folder() + "/" + r.id() + "-<what>.yaml with fires.")));
        neverSilent.forEach(r -> problems.add(r.problem(
                "is expected to be silent in no scenario.",
                "add a counter-example scenarios/" + r.folder() + "/" + r.id() + "-<what>-not.yaml with silent.")));
        return problems;
    }

    String counts() {
        return "rules " + neverFired.size() + " uncovered of " + rules + ", " + neverSilent.size()
                + " without a counter-example";
    }
}
