package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.drools.compiler.kproject.models.KieBaseModelImpl;
import org.drools.core.impl.InternalKieContainer;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.CanonicalKieModule;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Kept;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/**
 * The rules of a folder. A file that is the program's own, byte for byte, was compiled with the program; any other is compiled
 * now, alone, since no file of rules reads another.
 */
final class CompiledRules {
    private static final int FILES_KEPT = 50;

    /** By name and text: the folders of many codes hold the same shared files, and an edit changes one of them. */
    private static final Kept<String, List<Class<? extends Model>>> COMPILED = new Kept<>(FILES_KEPT);

    private CompiledRules() {}

    static Map<Phase, PhaseRules> load(RuleFolder folder, List<String> codes) {
        List<String> own = codes.stream()
                .flatMap(c -> folder.names(c + "/", ".drl").stream())
                .filter(file -> !folder.isShipped(file))
                .toList();
        RuleGate.admit(folder, own);
        Map<Phase, PhaseRules> rules = new EnumMap<>(Phase.class);
        List<Problem> problems = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            List<Class<? extends Model>> models = new ArrayList<>();
            for (String code : codes) {
                for (String file : folder.names(code + "/" + phase.key() + ".drl", "")) {
                    try {
                        models.addAll(
                                own.contains(file)
                                        ? compiled(folder, file)
                                        : ShippedRules.models(ShippedRules.classes(List.of(code))
                                                .getOrDefault(phase, List.of())));
                    } catch (InputException e) {
                        problems.addAll(e.problems());
                    }
                }
            }
            if (!models.isEmpty() && problems.isEmpty()) {
                rules.put(phase, ShippedRules.load(phase, models));
            }
        }
        Set<String> phases = Arrays.stream(Phase.values()).map(Phase::key).collect(Collectors.toSet());
        for (String file : own) {
            String phase = StringUtils.removeEnd(StringUtils.substringAfterLast(file, "/"), ".drl");
            if (!phases.contains(phase)) {
                problems.add(new Problem(
                        folder.origin() + "/" + file,
                        0,
                        "",
                        "is named after no phase, so that none of its rules is ever asked.",
                        Nearest.remedy(phase, phases)));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return rules;
    }

    private static List<Class<? extends Model>> compiled(RuleFolder folder, String file) {
        return COMPILED.of(file + "\n" + folder.text(file), key -> compile(folder, file));
    }

    /** One at a time, since the library keeps what it compiled by a name that is the same for all. */
    private static synchronized List<Class<? extends Model>> compile(RuleFolder folder, String file) {
        KieServices services = KieServices.get();
        ReleaseId release = services.newReleaseId("org.fumewarden", "edited", "1");
        KieFileSystem system = services.newKieFileSystem();
        system.generateAndWritePomXML(release);
        system.write("src/main/resources/" + file, folder.text(file));
        KieBuilder builder = services.newKieBuilder(system).buildAll(ExecutableModelProject.class);
        List<Problem> problems = builder.getResults().getMessages(Message.Level.ERROR).stream()
                .map(m -> problem(folder, m))
                .toList();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        InternalKieContainer container = (InternalKieContainer) services.newKieContainer(release);
        container.getKieBase();
        CanonicalKieModule module = (CanonicalKieModule) container.getMainKieModule();
        List<Class<? extends Model>> models = new ArrayList<>();
        module.getKieModuleModel().getKieBaseModels().values().forEach(base -> module.getModelForKBase(
                        (KieBaseModelImpl) base)
                .forEach(model -> models.add(model.getClass())));
        return models;
    }

    private static Problem problem(RuleFolder folder, Message message) {
        String file = StringUtils.defaultIfEmpty(message.getPath(), "rules").replace("src/main/resources/", "");
        return new Problem(
                folder.origin() + "/" + file,
                Math.max(message.getLine(), 0),
                "",
                "does not compile: " + message.getText().replaceAll("\\s+", " "),
                "compare it with a neighbouring rule of the same phase.");
    }
}
