package org.fumewarden.codes;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it. */
public final class InputException extends RuntimeException {
    private final transient List<Problem> problems;

    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::text).distinct().collect(Collectors.joining("\n")));
        this.problems = problems.stream().distinct().toList();
    }

    public InputException(Problem problem) {
        this(List.of(problem));
    }

    public List<Problem> problems() {
        return problems;
    }

    /** One file that cannot be used does not hide what is wrong with the next. */
    static void gather(List<Problem> problems, Runnable reading) {
        try {
            reading.run();
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
    }
}
