package org.fumewarden.endurance;

/** The carbon of one filter. */
public sealed interface CarbonBed permits CarbonBed.Measured, CarbonBed.Lumped {

    /** Grams of carbon. */
    double carbon();

    /**
     * Bulk density times (1 / velocity + offset), in grams second per cubic centimetre and centimetre.
     *
     * @param litresPerMinute through this bed
     * @param velocityOffset of the rate equation, seconds per centimetre
     */
    double resistanceToMassTransfer(double litresPerMinute, double velocityOffset);

    /**
     * A bed whose shape is known.
     *
     * @param carbon grams
     * @param bulkDensity grams of carbon per cubic centimetre of bed
     * @param area square centimetres across the flow
     */
    record Measured(double carbon, double bulkDensity, double area) implements CarbonBed {
        public Measured {
            new Inputs()
                    .positive("carbon in g", carbon)
                    .within("bulk density in g/cm3", bulkDensity, 0.1, 1.5)
                    .positive("bed area in cm2", area)
                    .orThrow("Carbon bed");
        }

        @Override
        public double resistanceToMassTransfer(double litresPerMinute, double velocityOffset) {
            double velocity = litresPerMinute * 1e3 / 60 / area;
            return bulkDensity * (1 / velocity + velocityOffset);
        }
    }

    /**
     * A bed known only by one fitted figure, good for one flow.
     *
     * @param carbon grams
     * @param fitted the resistance to mass transfer at that flow
     * @param atLitresPerMinute the flow it was fitted at
     */
    record Lumped(double carbon, double fitted, double atLitresPerMinute) implements CarbonBed {
        public Lumped {
            new Inputs()
                    .positive("carbon in g", carbon)
                    .positive("fitted resistance", fitted)
                    .positive("flow in L/min", atLitresPerMinute)
                    .orThrow("Carbon bed");
        }

        /** Grows in proportion below the fitted flow and stays above it, both on the safe side. */
        @Override
        public double resistanceToMassTransfer(double litresPerMinute, double velocityOffset) {
            return fitted * Math.max(1, atLitresPerMinute / litresPerMinute);
        }
    }
}
