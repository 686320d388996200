package org.fandown.practice;

/** The keys of a stored run. */
final class RunKeys {
    static final String FORMAT = "format";
    static final String FORMAT_NAME = "fandown-run/1";
    static final String SIMULATED = "simulated";
    static final String TITLE = "title";
    static final String SCENARIO = "scenario";
    static final String ENTRIES = "entries";
    static final String TICK = "tick";
    static final String STEP = "step";
    static final String TICKS = "ticks";
    static final String FINGERPRINT = "fingerprint";

    private RunKeys() {}
}
