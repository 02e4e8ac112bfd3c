package org.fumewarden.assessment;

import java.util.List;
import java.util.Locale;
import org.fumewarden.exposure.Status;
import org.fumewarden.model.SampleNote;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** Turns the readings of a task into exposures, or into open questions; never into a milder value. */
public final class Assessor {
    private final Task task;
    private final Figures figures;

    /**
     * An assessor of one task.
     *
     * @param figures the rows in force on its day
     */
    public Assessor(Task task, Figures figures) {
        this.task = task;
        this.figures = figures;
    }

    /**
     * One assessment for each reading, in the order of the file.
     *
     * @throws org.fumewarden.codes.InputException when sampled time does not fit into the shift
     */
    public List<Assessment> assess() {
        return task.readings().stream().map(this::assess).toList();
    }

    private Assessment assess(Reading reading) {
        if (reading instanceof Reading.Samples samples) {
            return SampleAssessment.of(samples, figures);
        }
        if (reading instanceof Reading.Shift shift) {
            return ShiftAssessment.of(shift, task, figures);
        }
        return RoomAssessment.of((Reading.RoomModel) reading, task, figures);
    }

    /** The open question in place of a level that could not be reckoned. */
    static Unknown open(Reading reading) {
        return new Unknown(
                "exposures." + reading.agent() + "." + reading.averaging().key(), reading.path());
    }

    static SampleNote note(Reading reading, Status status, String sentence) {
        return note(reading, status.name().toLowerCase(Locale.ROOT).replace('_', '-'), sentence);
    }

    static SampleNote note(Reading reading, String status, String sentence) {
        return new SampleNote(reading.agent(), status, sentence, reading.path());
    }
}
