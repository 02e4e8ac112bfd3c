package org.fumewarden.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.fumewarden.Extent;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Fact;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kie.api.KieBase;

/** A rule fires among all the others just as it does alone: no rule silences another. */
final class AloneTest {
    private static final int TASKS = Extent.of(3, 60, Extent.ALL);

    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "au", "nz", "fi", "it", "se"})
    void aRuleFiresAmongTheOthersAsItDoesAlone(String code) throws IOException {
        RuleBase base = RuleBase.shipped(code);
        Map<Phase, List<String>> classes = ShippedRules.classes(CodeBook.folders(RuleFolder.shipped(), code));
        List<Task> tasks = Extent.sample(tasks(base, code), Task::file, TASKS);
        List<Set<Fact>> facts = tasks.stream()
                .map(t -> (Set<Fact>) new LinkedHashSet<Fact>(t.inputs()))
                .toList();
        for (Phase phase : base.phases()) {
            PhaseRules rules = base.rules(phase);
            List<List<Firing>> among = new ArrayList<>();
            for (int t = 0; t < tasks.size(); t++) {
                among.add(firings(base, rules.base(), rules.spoken(), tasks.get(t), facts.get(t)));
                for (Firing firing : among.get(t)) {
                    facts.get(t).add(firing.conclusion());
                }
            }
            for (KieBase one : alone(ShippedRules.models(classes.get(phase)))) {
                String name = one.getKiePackages().stream()
                        .flatMap(p -> p.getRules().stream())
                        .findFirst()
                        .orElseThrow()
                        .getName();
                Map<String, SpokenRule> spoken = Map.of(name, rules.spoken().get(name));
                for (int t = 0; t < tasks.size(); t++) {
                    assertEquals(
                            new HashSet<>(firings(base, one, spoken, tasks.get(t), facts.get(t))),
                            among.get(t).stream()
                                    .filter(f -> f.rule() == spoken.get(name))
                                    .collect(Collectors.toSet()),
                            name + " " + tasks.get(t).file());
                }
            }
        }
    }

    private static List<Firing> firings(
            RuleBase base, KieBase compiled, Map<String, SpokenRule> spoken, Task task, Set<Fact> facts) {
        Map<String, Integer> places = spoken.keySet().stream().collect(Collectors.toMap(n -> n, n -> 0));
        Readers read = new Readers(compiled, places);
        PhaseSession session = new PhaseSession(
                PhaseSessions.session(compiled),
                base.rowsOn(task.on()).stream().filter(read::some).toList(),
                new MatchListener(spoken),
                match -> spoken.get(match.getRule().getName()).card().inForce(task.on()));
        try {
            return session.run(facts.stream().filter(read::some).toList());
        } finally {
            session.close();
        }
    }

    private static List<KieBase> alone(List<Class<? extends Model>> models) {
        List<KieBase> bases = new ArrayList<>();
        for (Model model : models.stream().map(ShippedRules::model).toList()) {
            model.getRules().forEach(rule -> {
                ModelImpl one = new ModelImpl(model.getPackageName());
                one.addRule(rule);
                model.getTypeMetaDatas().forEach(one::addTypeMetaData);
                bases.add(KieBaseBuilder.createKieBaseFromModel(List.<Model>of(one), ShippedRules.CONFIGURATION));
            });
        }
        return bases;
    }

    private static List<Task> tasks(RuleBase base, String code) throws IOException {
        TaskReader reader = new TaskReader(base.book().vocabulary());
        try (Stream<Path> files = Files.walk(Path.of("scenarios", code))) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(f -> reader.read(TaskTree.read(f), code, Optional.empty()))
                    .toList();
        }
    }
}
