package org.fumewarden.advice;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;

/** One task file, tried out with changes. Each try reads the file anew and runs the whole engine. */
public final class Bench {
    private final String name;
    private final Supplier<Located> source;
    private final Map<String, String> changes;
    private final Optional<String> code;
    private Optional<String> decides = Optional.empty();
    private final Optional<LocalDate> on;
    private final Map<String, Advisor> advisors = new ConcurrentHashMap<>();
    private final Function<String, Advisor> makeAdvisor;

    /**
     * A bench for a file.
     *
     * @param changes made before any other, path to value as in a file
     * @param code decides, whatever the file says
     * @param on day that decides, whatever the file says
     */
    public Bench(
            Path file,
            Map<String, String> changes,
            Optional<String> code,
            Optional<LocalDate> on,
            Function<String, Advisor> makeAdvisor) {
        this(file.toString(), () -> TaskTree.read(file), changes, code, on, makeAdvisor);
    }

    private Bench(
            String name,
            Supplier<Located> source,
            Map<String, String> changes,
            Optional<String> code,
            Optional<LocalDate> on,
            Function<String, Advisor> makeAdvisor) {
        this.name = name;
        this.source = source;
        this.changes = Map.copyOf(changes);
        this.code = code;
        this.on = on;
        this.makeAdvisor = makeAdvisor;
    }

    /**
     * A bench for a task that came as text.
     *
     * @param name stands for the file in messages
     */
    public static Bench ofText(String name, String text, Function<String, Advisor> makeAdvisor) {
        return new Bench(
                name, () -> TaskTree.parse(name, text), Map.of(), Optional.empty(), Optional.empty(), makeAdvisor);
    }

    /** The same bench with more changes made before any other. */
    public Bench with(Map<String, String> more) {
        Map<String, String> all = new HashMap<>(changes);
        all.putAll(more);
        return new Bench(name, source, all, code, on, this::advisor);
    }

    /**
     * The same bench, whose advice speaks another language.
     *
     * @param names of the ids of the vocabulary in that language; none for the language of the rule base
     */
    public Bench speaking(String language, Map<String, String> names) {
        return names.isEmpty()
                ? this
                : new Bench(name, source, changes, code, on, id -> advisor(id).speaking(language, names));
    }

    /** The code that decides, found once: the one that was named, unless it leaves such tasks to another. */
    public String code() {
        if (decides.isEmpty()) {
            Located task = source.get();
            changes.forEach((path, value) -> TaskTree.set(task, path, value));
            String named = code.or(() -> TaskTree.top(task, "code"))
                    .orElseThrow(() -> new InputException(new Problem(
                            name,
                            0,
                            "code",
                            "is not given.",
                            "add a line \"code: gb\", or give --code.",
                            Fault.MISSING)));
            try {
                Advisor asked = TaskTree.byCode(task, code.isPresent(), () -> advisor(named));
                decides = Optional.of(asked.base().book().card().decides(task));
            } catch (InputException e) {
                throw ofChange(e, Map.of());
            }
        }
        return decides.get();
    }

    /** The advisor of a code, made once. */
    public Advisor advisor(String id) {
        return advisors.computeIfAbsent(id, makeAdvisor);
    }

    /** The tables of the code that decides. */
    public CodeBook book() {
        return advisor(code()).base().book();
    }

    /** Decides the task as the file has it. */
    public Advice advise() {
        return advise(code(), Map.of());
    }

    /** Decides the task with more changes. */
    public Advice advise(Map<String, String> more) {
        return advise(code(), more);
    }

    /** Decides the task under a code, with more changes. */
    public Advice advise(String id, Map<String, String> more) {
        return advisor(id).advise(task(id, more));
    }

    /** The tree of the task, with what it extends, the changes of this bench, and more changes. */
    public Located tree(Map<String, String> more) {
        Located root = source.get();
        changes.forEach((path, value) -> TaskTree.set(root, path, value));
        more.forEach((path, value) -> TaskTree.set(root, path, value));
        return root;
    }

    /** The task under a code, with more changes; stops when the thread was interrupted, so that long searches can be ended. */
    public Task task(String id, Map<String, String> more) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The work on this task was stopped.");
        }
        Located root = tree(more);
        try {
            return new TaskReader(advisor(id).base().book().vocabulary()).read(root, id, on);
        } catch (InputException e) {
            throw ofChange(ofRules(e, advisor(id).base().book()), more);
        }
    }

    /** A name of the program that changed rules no longer know is none of the file. */
    private static InputException ofRules(InputException wrong, CodeBook book) {
        Optional<String> folder = book.changedFolder()
                .filter(f -> RuleFolder.shipped().codes().contains(book.card().id()));
        if (folder.isEmpty()) {
            return wrong;
        }
        Set<String> paths = CodeBook.read(RuleFolder.shipped(), book.card().id()).vocabulary().questions().stream()
                .map(Question::path)
                .collect(Collectors.toSet());
        return new InputException(wrong.problems().stream()
                .map(p -> p.fault() == Fault.NAME && paths.contains(p.field())
                        ? new Problem(
                                folder.get(),
                                0,
                                p.field(),
                                "is a name of the program that these rules ask for under another one.",
                                "give the question its path again in " + folder.get()
                                        + ", in the table of questions, or write the name that it has there.")
                        : p)
                .toList());
    }

    /** A problem with a value that was set beside the file is none of the file. */
    private InputException ofChange(InputException wrong, Map<String, String> more) {
        return new InputException(
                wrong.problems().stream().map(p -> ofChange(p, more)).toList());
    }

    private Problem ofChange(Problem problem, Map<String, String> more) {
        String path = problem.file().startsWith(TaskTree.GIVEN)
                ? problem.file().substring(TaskTree.GIVEN.length())
                : problem.field();
        String option = more.containsKey(path) ? "--change" : changes.containsKey(path) ? "--set" : problem.file();
        return option.equals(problem.file())
                ? problem
                : new Problem(option, 0, path, problem.message(), problem.remedy());
    }

    /** The named variants that the file keeps: name to changes. */
    public Map<String, Map<String, String>> variants() {
        Map<String, Map<String, String>> variants = new LinkedHashMap<>();
        Located root = source.get();
        Located kept = root.entries().get("variants");
        if (kept != null) {
            kept.entries().forEach((name, entry) -> {
                Map<String, String> changed = new LinkedHashMap<>();
                entry.entries().forEach((path, value) -> changed.put(path, value.text()));
                variants.put(name, changed);
            });
            root.settle();
        }
        return variants;
    }
}
