package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;

/**
 * One application of a rule as the engine reported it.
 *
 * @param bindings those that the sentence of the rule names
 */
record Firing(SpokenRule rule, List<Fact> premises, Map<String, Object> bindings, Conclusion conclusion) {}
