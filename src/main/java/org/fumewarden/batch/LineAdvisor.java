package org.fumewarden.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.batch.Outcome.Fate;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;

/**
 * Advises on one line at a time, and keeps nothing of it. One instance may serve many threads; it fits as a worker
 * below any engine that hands out lines. The same line always gives the same outcome.
 */
public final class LineAdvisor {
    private static final String LINE = "line";

    private final Function<String, Advisor> makeAdvisor;
    private final Optional<String> code;
    private final Optional<LocalDate> on;
    private final Form form;
    private final Map<String, Desk> desks = new ConcurrentHashMap<>();

    /** Who reads the tasks of a code and who decides them. */
    private record Desk(TaskReader reader, Advisor advisor) {
        static Desk of(Advisor advisor) {
            return new Desk(new TaskReader(advisor.base().book().vocabulary()), advisor);
        }
    }

    /** How the advice of a line is written: {@code AdviceJson::writeUntried} with its trail, {@code BriefJson::write} without. */
    public interface Form {
        /** Writes the advice as the next value. */
        void write(Advice advice, JsonGenerator json) throws IOException;
    }

    /** A worker that writes each advice in full, with its trail. */
    public LineAdvisor(Function<String, Advisor> makeAdvisor, Optional<String> code, Optional<LocalDate> on) {
        this(makeAdvisor, code, on, AdviceJson::writeUntried);
    }

    /**
     * A worker.
     *
     * @param makeAdvisor makes the advisor of a code; asked once for each code, on the thread that needs it first
     * @param code decides, whatever a task says
     * @param on day that decides, whatever a task says
     * @param form how each advice is written
     */
    public LineAdvisor(
            Function<String, Advisor> makeAdvisor, Optional<String> code, Optional<LocalDate> on, Form form) {
        this.makeAdvisor = makeAdvisor;
        this.code = code;
        this.on = on;
        this.form = form;
    }

    /** Advises on a task written as a JSON object; wrong input becomes a rejected outcome, never an exception. */
    public Outcome answer(long number, String task) {
        return answer(new Entry.Line(number, task.getBytes(StandardCharsets.UTF_8), false));
    }

    /** Advises on an entry of a batch; wrong input becomes a rejected outcome, never an exception. */
    public Outcome answer(Entry entry) {
        if (entry instanceof Entry.Settled settled) {
            return settled.outcome();
        }
        try {
            Advice advice = advise(tree(entry));
            return outcome(entry, Fate.ADVISED, json -> {
                AdviceJson.changed(desk(advice.code()).advisor().base().book().changedFolder(), json);
                if (advice.unit().filter(UnitInHand::barred).isPresent()) {
                    json.writeBooleanField("do-not-use-this-unit", true);
                }
                json.writeFieldName("advice");
                form.write(advice, json);
            });
        } catch (InputException e) {
            return reject(entry, Fate.REJECTED, e.problems());
        } catch (RuntimeException e) {
            Problem fault =
                    new Problem("", 0, "", "Fumewarden failed: " + e, "advise on this task alone and report it.");
            return reject(entry, Fate.FAULT, List.of(fault));
        }
    }

    private static Located tree(Entry entry) {
        if (entry instanceof Entry.TaskFile file) {
            return TaskTree.read(file.path());
        }
        Entry.Line line = (Entry.Line) entry;
        if (line.tooLong()) {
            throw wrong(
                    "is longer than the " + YamlFiles.MAX_BYTES + " bytes that are read.",
                    "check that every task ends its line.");
        }
        String text = YamlFiles.text(LINE, line.bytes()).strip();
        if (!text.startsWith("{") || !text.endsWith("}")) {
            throw wrong("is not a JSON object.", "write one task a line, from { to }.");
        }
        return TaskTree.parse(LINE, text);
    }

    private static InputException wrong(String message, String maybe) {
        return new InputException(new Problem(LINE, 0, "", message, maybe));
    }

    private Advice advise(Located tree) {
        String id = code.or(() -> TaskTree.top(tree, "code"))
                .orElseThrow(() -> new InputException(
                        new Problem(LINE, 0, "code", "is not given.", "add \"code\" to the task, or give --code.")));
        Desk asked = TaskTree.byCode(tree, code.isPresent(), () -> desk(id));
        String decides = asked.advisor().base().book().card().decides(tree);
        Desk desk = desk(decides);
        return desk.advisor().advise(desk.reader().read(tree, decides, on));
    }

    private Desk desk(String id) {
        return desks.computeIfAbsent(id, code -> Desk.of(makeAdvisor.apply(code)));
    }

    private static Outcome reject(Entry entry, Fate fate, List<Problem> problems) {
        return outcome(entry, fate, json -> {
            json.writeArrayFieldStart("problems");
            for (Problem problem : problems) {
                json.writeStartObject();
                json.writeStringField("field", problem.field());
                if (entry.file().isPresent() && problem.line() > 0) {
                    json.writeNumberField("at", problem.line());
                }
                json.writeStringField("message", problem.message());
                json.writeStringField("maybe", problem.remedy());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static Outcome outcome(Entry entry, Fate fate, AdviceJson.Writing rest) {
        String text = AdviceJson.text(json -> {
            json.writeStartObject();
            json.writeNumberField(LINE, entry.number());
            json.writeStringField("input", entry.digest());
            if (entry.file().isPresent()) {
                json.writeStringField("file", entry.file().get());
            }
            rest.to(json);
            json.writeEndObject();
        });
        return new Outcome(entry.number(), fate, Digest.sealed(text));
    }
}
