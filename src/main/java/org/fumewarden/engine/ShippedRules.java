package org.fumewarden.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.KieServices;

/** Loads the rules that were compiled into the program, straight from their generated classes. */
final class ShippedRules {
    private static final String INDEX = "/META-INF/kie/org.fumewarden/fumewarden/drools-model";
    private static final String PREFIX = "rules.";

    /** Made once: it looks for its parts in every library. */
    private static final KieBaseConfiguration CONFIGURATION = KieServices.get().newKieBaseConfiguration();

    private ShippedRules() {}

    /** The generated classes of each phase that has rules in these folders. */
    static Map<Phase, List<String>> classes(List<String> folders) {
        Map<Phase, List<String>> classes = new EnumMap<>(Phase.class);
        index().lines()
                .map(String::strip)
                .filter(line -> line.startsWith(PREFIX))
                .forEach(line -> {
                    String[] parts = line.split("\\.");
                    if (parts.length >= 4 && folders.contains(parts[1].replace('_', '-'))) {
                        Phase.of(parts[2]).ifPresent(phase -> classes.computeIfAbsent(phase, k -> new ArrayList<>())
                                .add(line));
                    }
                });
        return classes;
    }

    static PhaseRules load(Phase phase, List<String> classes) {
        List<Model> models = classes.stream().map(ShippedRules::model).toList();
        return PhaseRules.of(phase, KieBaseBuilder.createKieBaseFromModel(models, CONFIGURATION));
    }

    private static Model model(String className) {
        try {
            return (Model) Class.forName(className).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the program lacks the compiled rules " + className, e);
        }
    }

    private static String index() {
        try (InputStream in = ShippedRules.class.getResourceAsStream(INDEX)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its compiled rules");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
