package org.fumewarden.exposure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.fumewarden.model.Reckoning;

/** One reference vector: inputs, expected values, tolerance and the document they come from. */
record Vector(String id, String topic, JsonNode inputs, JsonNode expected, JsonNode tolerance, String source) {

    /** All vectors, and the count that the file states. */
    record All(int stated, List<Vector> vectors) {}

    static All read() {
        try (InputStream in = Vector.class.getResourceAsStream("reference-values.json")) {
            JsonNode root = new ObjectMapper().readTree(in);
            List<Vector> vectors = new ArrayList<>();
            for (JsonNode v : root.get("vectors")) {
                vectors.add(new Vector(
                        v.get("id").asText(),
                        v.get("topic").asText(),
                        v.get("inputs"),
                        v.get("expected"),
                        v.get("tolerance"),
                        v.get("source").asText()));
            }
            return new All(root.at("/meta/count").asInt(), vectors);
        } catch (IOException e) {
            throw new IllegalStateException("The reference values cannot be read.", e);
        }
    }

    double number(String name) {
        JsonNode node = inputs.get(name);
        if (node == null || !node.isNumber()) {
            throw new IllegalArgumentException(id + " has no number " + name);
        }
        return node.asDouble();
    }

    int count(String name) {
        return (int) number(name);
    }

    boolean has(String name) {
        return inputs.has(name);
    }

    String word(String name) {
        return inputs.path(name).asText();
    }

    double[] numbers(String name) {
        return numbers(inputs.get(name));
    }

    static double[] numbers(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    List<Double> list(String name) {
        return java.util.Arrays.stream(numbers(name)).boxed().toList();
    }

    /** The samples of "data", or of "x" with its detection flags. */
    Reckoning<SampleSet> samples() {
        if (has("data")) {
            return SampleSet.found(numbers("data"));
        }
        double[] x = numbers("x");
        double[] detected = numbers("detected");
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            samples.add(detected[i] == 1 ? Sample.found(x[i]) : Sample.below(x[i]));
        }
        return SampleSet.of(samples);
    }

    SampleSet set() {
        return samples().value().orElseThrow();
    }

    LognormalFit fit() {
        return LognormalFits.of(set()).value().orElseThrow();
    }

    /** Pairs of concentration and time, with the time in minutes. */
    List<Period> periods(String name, double minutesPerUnit) {
        List<Period> periods = new ArrayList<>();
        for (JsonNode pair : inputs.get(name)) {
            periods.add(new Period(pair.get(0).asDouble(), pair.get(1).asDouble() * minutesPerUnit));
        }
        return periods;
    }
}
