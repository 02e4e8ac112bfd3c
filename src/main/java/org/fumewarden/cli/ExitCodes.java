package org.fumewarden.cli;

/** Exit codes of every command. */
final class ExitCodes {
    static final int COMPLETE = 0;
    static final int FAULT = 1;
    static final int BAD_INPUT = 2;
    static final int NOT_SETTLED = 3;

    private ExitCodes() {}
}
