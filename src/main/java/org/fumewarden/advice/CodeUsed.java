package org.fumewarden.advice;

import java.util.List;

/** The code that decided, with its edition and what it does not cover. */
public record CodeUsed(String id, String name, String edition, String checkedOn, List<String> lacks) {}
