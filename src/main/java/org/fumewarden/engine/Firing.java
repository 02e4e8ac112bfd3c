package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;

/**
 * One application of a rule as the engine reported it.
 *
 * @param bindings those that the sentence of the rule names
 * @param absences what the rule asked not to be there
 */
record Firing(
        SpokenRule rule,
        List<Fact> premises,
        Map<String, Object> bindings,
        List<Absence> absences,
        Conclusion conclusion) {}
