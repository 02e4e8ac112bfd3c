package org.fumewarden.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;

/** Benches on the shipped rules, with one advisor for each code. */
final class Benches {
    static final Path BRACKETS = Path.of("scenarios/tours/stainless-brackets.yaml");

    private Benches() {}

    static Bench of(Path file) {
        return of(file, Map.of());
    }

    static Bench of(Path file, Map<String, String> changes) {
        return new Bench(file, changes, Optional.empty(), Optional.empty(), Advisor::shipped);
    }

    static List<Path> tours() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios/tours"))) {
            return files.sorted().toList();
        }
    }
}
