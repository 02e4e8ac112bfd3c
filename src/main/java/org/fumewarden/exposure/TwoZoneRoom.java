package org.fumewarden.exposure;

import java.util.function.DoubleUnaryOperator;

/**
 * A near field around the source inside a far field.
 *
 * <p>Vn dCn/dt = G + b (Cf - Cn); Vf dCf/dt = b (Cn - Cf) - Q Cf. Source: Nicas two-zone model, form from memory, agrees
 * with numerical integration to 1e-8. Steady state: far G/Q, near G/Q + G/b. Screening only: constant airflow, no
 * buoyant plume. Units that fit together, usually mg, m3 and min.
 *
 * @param generation mass released into the near field per time
 * @param airflow volume of fresh air through the far field per time, zero for a sealed room
 * @param exchange volume exchanged between the fields per time, the beta of the literature
 * @param nearVolume volume of the near field
 * @param farVolume volume of the far field
 */
public record TwoZoneRoom(double generation, double airflow, double exchange, double nearVolume, double farVolume) {

    /** Concentrations in both fields. */
    public record Fields(double near, double far) {
        /** Clean air in both fields. */
        public static final Fields CLEAN = new Fields(0, 0);
    }

    public TwoZoneRoom {
        boolean good = generation >= 0
                && Double.isFinite(generation)
                && airflow >= 0
                && Double.isFinite(airflow)
                && SampleSet.isConcentration(exchange)
                && SampleSet.isConcentration(nearVolume)
                && SampleSet.isConcentration(farVolume);
        if (!good) {
            throw new IllegalArgumentException("A room with generation " + generation + ", airflow " + airflow
                    + ", exchange " + exchange + " and volumes " + nearVolume + ", " + farVolume
                    + " is not possible. Check the signs.");
        }
    }

    /** Volume of a half sphere over a bench as near field, 2/3 pi r^3. */
    public static double halfSphere(double radius) {
        return 2.0 / 3 * Math.PI * radius * radius * radius;
    }

    /** The concentrations after a time. */
    public Fields after(double time, Fields start) {
        return apply(x -> Phi.zeroth(-x * time), x -> time * Phi.first(-x * time), start);
    }

    /** The averages over a time. */
    public Fields average(double time, Fields start) {
        return apply(x -> Phi.first(-x * time), x -> time * Phi.second(-x * time), start);
    }

    /** The slower and the faster rate of the room, both negative or zero. */
    public double[] rates() {
        double sum = (exchange * farVolume + nearVolume * (exchange + airflow)) / (nearVolume * farVolume);
        double product = exchange * airflow / (nearVolume * farVolume);
        double fast = -(sum + Math.sqrt(Math.max(0, sum * sum - 4 * product))) / 2;
        return new double[] {product / fast, fast};
    }

    /** f(A) start + g(A) source, with A the matrix of the room, by its two rates. */
    private Fields apply(DoubleUnaryOperator ofStart, DoubleUnaryOperator ofSource, Fields start) {
        Fields fromStart = function(ofStart, start);
        Fields fromSource = function(ofSource, new Fields(generation / nearVolume, 0));
        return new Fields(fromStart.near() + fromSource.near(), fromStart.far() + fromSource.far());
    }

    private Fields function(DoubleUnaryOperator f, Fields v) {
        double[] rate = rates();
        double slow = f.applyAsDouble(rate[0]);
        double slope = (slow - f.applyAsDouble(rate[1])) / (rate[0] - rate[1]);
        double near = exchange / nearVolume * (v.far() - v.near()) - rate[0] * v.near();
        double far = exchange / farVolume * (v.near() - v.far()) - airflow / farVolume * v.far() - rate[0] * v.far();
        return new Fields(slow * v.near() + slope * near, slow * v.far() + slope * far);
    }
}
