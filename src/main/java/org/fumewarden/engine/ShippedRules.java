package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.model.Keyed;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.KieServices;
import org.kie.internal.conf.ShareBetaNodesOption;

/** Loads the rules that were compiled into the program, straight from generated classes. */
final class ShippedRules {
    private static final String INDEX = "/META-INF/kie/org.fumewarden/fumewarden/drools-model";
    private static final String PREFIX = "rules.";

    /** Made once: it looks for its parts in every library. */
    static final KieBaseConfiguration CONFIGURATION = configuration();

    private ShippedRules() {}

    /** Joins that rules share can leave one of them silent; see docs/decisions/no-shared-joins.md. */
    private static KieBaseConfiguration configuration() {
        KieBaseConfiguration configuration = KieServices.get().newKieBaseConfiguration();
        configuration.setOption(ShareBetaNodesOption.NO);
        return configuration;
    }

    /** The generated classes of each phase that has rules in these folders. */
    static Map<Phase, List<String>> classes(List<String> folders) {
        Map<Phase, List<String>> classes = new EnumMap<>(Phase.class);
        ProgramFile.text(ShippedRules.class, INDEX)
                .lines()
                .map(String::strip)
                .filter(line -> line.startsWith(PREFIX))
                .forEach(line -> {
                    String[] parts = line.split("\\.");
                    if (parts.length >= 4 && folders.contains(parts[1].replace('_', '-'))) {
                        Keyed.find(Phase.class, parts[2])
                                .ifPresent(phase -> classes.computeIfAbsent(phase, k -> new ArrayList<>())
                                        .add(line));
                    }
                });
        return classes;
    }

    static PhaseRules load(Phase phase, List<Class<? extends Model>> classes) {
        return PhaseRules.of(phase, classes.stream().map(ShippedRules::model).toList());
    }

    /** The generated classes by their names. */
    static List<Class<? extends Model>> models(List<String> names) {
        List<Class<? extends Model>> models = new ArrayList<>();
        for (String name : names) {
            try {
                models.add(Class.forName(name).asSubclass(Model.class));
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException("the program lacks the compiled rules " + name, e);
            }
        }
        return models;
    }

    static Model model(Class<? extends Model> type) {
        try {
            return type.getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the compiled rules cannot be made: " + type.getName(), e);
        }
    }
}
