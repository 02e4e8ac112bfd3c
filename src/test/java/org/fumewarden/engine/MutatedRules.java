package org.fumewarden.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.model.impl.ModelImpl;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Keyed;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieContainer;

/** Compiles changed copies of single rules, and puts one in the place of the rule that ships. */
public final class MutatedRules {
    private static final String INDEX = "META-INF/kie/org.fumewarden/%s/drools-model";

    private MutatedRules() {}

    /**
     * Compiles rule texts, each with a package of its own. What they compare and fire is taken from the {@link Budget}.
     *
     * @param texts the text of each rule file by its package
     * @return the compiled rule by package; those that do not compile are left out
     */
    public static Map<String, Rule> compile(Map<String, String> texts) {
        Map<String, String> left = new HashMap<>(texts);
        while (!left.isEmpty()) {
            KieServices services = KieServices.get();
            ReleaseId release = services.newReleaseId("org.fumewarden", "mutants", "1");
            KieFileSystem system = services.newKieFileSystem();
            system.generateAndWritePomXML(release);
            left.forEach(
                    (name, text) -> system.write("src/main/resources/" + name.replace('.', '/') + "/one.drl", text));
            KieBuilder builder = services.newKieBuilder(system).buildAll(ExecutableModelProject.class);
            TreeSet<String> wrong = new TreeSet<>();
            for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
                String path = message.getPath() == null ? "" : message.getPath().replace('/', '.');
                String text = String.valueOf(message.getText()).replace('/', '.');
                left.keySet().stream()
                        .filter(n -> (path + ".").contains(n + ".") || text.contains(n + "."))
                        .forEach(wrong::add);
            }
            if (builder.getResults().getMessages(Message.Level.ERROR).isEmpty()) {
                return rules(services.newKieContainer(release));
            }
            if (!left.keySet().removeAll(wrong)) {
                throw new IllegalStateException(builder.getResults().toString());
            }
        }
        return Map.of();
    }

    private static Map<String, Rule> rules(KieContainer container) {
        Map<String, Rule> rules = new HashMap<>();
        for (Model model : models(container.getClassLoader(), INDEX.formatted("mutants"))) {
            model.getRules().forEach(r -> rules.put(r.getPackage(), Budget.counted(r)));
        }
        return rules;
    }

    /** The shipped rules of a code in which one rule is replaced by another of the same name. */
    public static RuleBase replace(RuleBase shipped, String phase, Rule mutant) {
        Phase changed = Keyed.find(Phase.class, phase).orElseThrow();
        List<Model> parts = new ArrayList<>();
        for (Model model : models(MutatedRules.class.getClassLoader(), INDEX.formatted("fumewarden"))) {
            String[] name = model.getClass().getName().split("\\.");
            if (name[2].equals(phase) && shipped.book().folders().contains(name[1].replace('_', '-'))) {
                List<Rule> rules = new ArrayList<>(model.getRules());
                if (rules.removeIf(r -> r.getName().equals(mutant.getName()))) {
                    rules.add(mutant);
                }
                ModelImpl copy = new ModelImpl(model.getName()).withRules(rules).withGlobals(model.getGlobals());
                model.getTypeMetaDatas().forEach(copy::addTypeMetaData);
                parts.add(copy);
            }
        }
        Map<Phase, PhaseRules> rules = new EnumMap<>(Phase.class);
        shipped.phases().forEach(p -> rules.put(p, shipped.rules(p)));
        rules.put(changed, PhaseRules.of(changed, parts));
        return RuleBase.of(shipped.book(), rules);
    }

    /** The shipped rules over other tables. */
    public static RuleBase over(RuleBase shipped, CodeBook tables) {
        Map<Phase, PhaseRules> rules = new EnumMap<>(Phase.class);
        shipped.phases().forEach(p -> rules.put(p, shipped.rules(p)));
        return RuleBase.of(tables, rules);
    }

    private static List<Model> models(ClassLoader loader, String index) {
        try (InputStream in = loader.getResourceAsStream(index)) {
            List<Model> models = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R")) {
                if (line.startsWith("rules.")) {
                    models.add((Model) loader.loadClass(line.strip())
                            .getDeclaredConstructor()
                            .newInstance());
                }
            }
            return models;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
