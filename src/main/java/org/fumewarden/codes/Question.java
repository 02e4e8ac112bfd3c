package org.fumewarden.codes;

import java.util.Map;
import java.util.Optional;

/**
 * A question that a task file may answer.
 *
 * @param path where the answer stands in the task file
 * @param ask the question as a person would ask it
 * @param kind {@code choice}, {@code flag}, {@code duration}, {@code percent}, {@code length}, {@code temperature}, {@code volume}, {@code flow}, {@code mass-flow}, {@code mass}, {@code pressure}, {@code energy}, {@code area}, {@code density}, {@code age}, {@code current}, {@code count}, {@code day} or {@code text}
 * @param choices allowed answers with their names, empty for other kinds
 * @param choicesFrom catalogue that holds the allowed answers
 * @param group heading under which a form shows it
 */
public record Question(
        String id,
        String path,
        String ask,
        String kind,
        Map<String, String> choices,
        Optional<String> choicesFrom,
        String group) {}
