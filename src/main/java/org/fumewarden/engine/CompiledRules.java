package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;
import org.drools.model.codegen.ExecutableModelProject;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/** Compiles the rules of a folder in memory, one knowledge base a phase. */
final class CompiledRules {
    private CompiledRules() {}

    static Map<Phase, KieBase> load(RuleFolder folder, List<String> codes) {
        RuleGate.admit(folder, drl(folder, codes));
        Map<Phase, KieBase> bases = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            List<String> files = new ArrayList<>();
            for (String code : codes) {
                files.addAll(folder.names(code + "/" + phase.key() + ".drl", ""));
            }
            if (!files.isEmpty()) {
                bases.put(phase, compile(folder, phase, files));
            }
        }
        return bases;
    }

    private static List<String> drl(RuleFolder folder, List<String> codes) {
        return codes.stream()
                .flatMap(c -> folder.names(c + "/", ".drl").stream())
                .toList();
    }

    private static KieBase compile(RuleFolder folder, Phase phase, List<String> files) {
        KieServices services = KieServices.get();
        ReleaseId release = services.newReleaseId("org.fumewarden.edited", phase.key(), "1");
        KieFileSystem system = services.newKieFileSystem();
        system.generateAndWritePomXML(release);
        for (String file : files) {
            system.write("src/main/resources/" + file, folder.text(file));
        }
        KieBuilder builder = services.newKieBuilder(system).buildAll(ExecutableModelProject.class);
        List<Problem> problems = builder.getResults().getMessages(Message.Level.ERROR).stream()
                .map(m -> problem(folder, m))
                .toList();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return services.newKieContainer(release).getKieBase();
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
