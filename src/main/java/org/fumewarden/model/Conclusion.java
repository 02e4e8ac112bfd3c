package org.fumewarden.model;

/** Something that a rule has concluded. */
public sealed interface Conclusion extends Fact
        permits Account,
                Bar,
                Bound,
                ByChoice,
                Caution,
                Condition,
                Control,
                Cover,
                Demand,
                Doubt,
                FactorInForce,
                FilterNeed,
                Gap,
                Gate,
                Hazard,
                Holding,
                Interim,
                Need,
                NoLimit,
                Offer,
                OpenNeed,
                Owed,
                Ratio,
                Ruling,
                Standing,
                Stop,
                Trait,
                UnitFinding,
                UsualPeak {

    /** What the conclusion is about: an agent, a class, a question. Overrides match on it. */
    String subject();
}
