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
import org.kie.api.KieBase;

/** Loads the rules that were compiled into the program, straight from their generated classes. */
final class ShippedRules {
    private static final String INDEX = "/META-INF/kie/org.fumewarden/fumewarden/drools-model";
    private static final String PREFIX = "rules.";

    private ShippedRules() {}

    static Map<Phase, KieBase> load(List<String> folders) {
        Map<Phase, List<Model>> models = new EnumMap<>(Phase.class);
        for (String line : index().split("\\R")) {
            String[] parts = line.strip().split("\\.");
            if (!line.startsWith(PREFIX) || parts.length < 4 || !folders.contains(parts[1].replace('_', '-'))) {
                continue;
            }
            Phase.of(parts[2]).ifPresent(phase -> models.computeIfAbsent(phase, k -> new ArrayList<>())
                    .add(model(line.strip())));
        }
        Map<Phase, KieBase> bases = new EnumMap<>(Phase.class);
        models.forEach((phase, parts) -> bases.put(phase, KieBaseBuilder.createKieBaseFromModel(parts)));
        return bases;
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
