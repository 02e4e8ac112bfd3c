package org.fumewarden.model;

/** A fact that comes from the task file. */
public sealed interface Input extends Fact
        permits Answer,
                Breath,
                Marked,
                Measure,
                Unknown,
                Exposure,
                Judged,
                NoneStated,
                SampleNote,
                StatedLimit,
                Stretch {

    /** Path of the entry in the task file, for example {@code task.place}. */
    String path();
}
