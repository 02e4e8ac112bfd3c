package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;

/** One application of a rule as the engine reported it. */
record Firing(String rule, List<Fact> premises, Map<String, Object> bindings, Conclusion conclusion) {}
