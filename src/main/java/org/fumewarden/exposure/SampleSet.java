package org.fumewarden.exposure;

import java.util.Arrays;
import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** Samples of one group of workers, all in one unit, all above zero. */
public final class SampleSet {
    private final List<Sample> samples;
    private final int detected;

    private SampleSet(List<Sample> samples) {
        this.samples = List.copyOf(samples);
        this.detected = (int) samples.stream().filter(Sample::detected).count();
    }

    /** Checks the samples; zero, negative and non-numeric results are refused. */
    public static Reckoning<SampleSet> of(List<Sample> samples) {
        if (samples.isEmpty()) {
            return Reckoning.none(Soundness.TOO_FEW, "There is no sample. Enter at least one result.");
        }
        for (int i = 0; i < samples.size(); i++) {
            double found = samples.get(i).concentration();
            if (!isConcentration(found)) {
                return Reckoning.none(
                        Soundness.INVALID_VALUE,
                        "Sample " + (i + 1) + " is " + found
                                + ". Enter \"nothing found\" as below its detection limit.");
            }
            double minutes = samples.get(i).minutes().orElse(1);
            if (!isConcentration(minutes)) {
                return Reckoning.none(
                        Soundness.INVALID_VALUE,
                        "Sample " + (i + 1) + " ran for " + minutes + " minutes. Leave the time out.");
            }
        }
        return Reckoning.of(new SampleSet(samples));
    }

    /** Results that were all detected. */
    public static Reckoning<SampleSet> found(double... concentrations) {
        return of(Arrays.stream(concentrations).mapToObj(Sample::found).toList());
    }

    static boolean isConcentration(double value) {
        return value > 0 && Double.isFinite(value);
    }

    /** The samples in the order given. */
    public List<Sample> samples() {
        return samples;
    }

    /** How many samples. */
    public int size() {
        return samples.size();
    }

    /** How many were detected. */
    public int detected() {
        return detected;
    }

    /** True when every sample was detected. */
    public boolean complete() {
        return detected() == size();
    }

    /** The highest result or detection limit: no sample was above it. */
    public double highest() {
        return samples.stream().mapToDouble(Sample::concentration).max().orElseThrow();
    }

    /** The highest detection limit of the samples with nothing found, 0 when all were detected. */
    public double highestDetectionLimit() {
        return samples.stream()
                .filter(s -> !s.detected())
                .mapToDouble(Sample::concentration)
                .max()
                .orElse(0);
    }

    /** Natural logarithms of all results and detection limits, in the order given. */
    double[] logs() {
        return samples.stream().mapToDouble(s -> Math.log(s.concentration())).toArray();
    }

    boolean[] flags() {
        boolean[] flags = new boolean[samples.size()];
        for (int i = 0; i < flags.length; i++) {
            flags[i] = samples.get(i).detected();
        }
        return flags;
    }
}
