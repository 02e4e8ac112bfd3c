package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.util.Set;

/** Sets advice in lines: one for each part, and for each entry of the parts that are lists. */
final class AdviceLines extends MinimalPrettyPrinter {
    private static final long serialVersionUID = 1;
    private static final Set<String> LISTED = Set.of("respirators", "checks", "questions", "accounts", "trail");
    private static final Set<String> TRAIL = Set.of("facts", "steps");

    @Override
    public void beforeObjectEntries(JsonGenerator json) throws IOException {
        line(json);
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
        json.writeRaw(',');
        line(json);
    }

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
        line(json);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(',');
        line(json);
    }

    private static void line(JsonGenerator json) throws IOException {
        if (begins(json.getOutputContext())) {
            json.writeRaw('\n');
        }
    }

    private static boolean begins(JsonStreamContext inside) {
        JsonStreamContext around = inside.getParent();
        if (around.inRoot()) {
            return true;
        }
        String name = around.hasCurrentName() ? around.getCurrentName() : "";
        return around.getParent().inRoot() ? LISTED.contains(name) : TRAIL.contains(name) && inTrail(around);
    }

    private static boolean inTrail(JsonStreamContext context) {
        for (JsonStreamContext c = context; !c.inRoot(); c = c.getParent()) {
            if ("trail".equals(c.getCurrentName()) && c.getParent().inRoot()) {
                return true;
            }
        }
        return false;
    }
}
