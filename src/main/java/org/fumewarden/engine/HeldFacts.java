package org.fumewarden.engine;

import org.fumewarden.model.Fact;
import org.fumewarden.model.Kept;

/** The facts met lately, each held once: the same few come with task after task. Safe to share between threads. */
final class HeldFacts {
    private static final int KEPT = 4_000;

    private final Kept<Held, Held> kept = new Kept<>(KEPT);

    Held of(Fact fact) {
        return kept.of(new Held(fact), held -> held);
    }
}
