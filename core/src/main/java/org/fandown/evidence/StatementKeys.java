package org.fandown.evidence;

/** The keys of statements in files. */
final class StatementKeys {
    static final String BEGIN = "begin";
    static final String RECORD = "record";
    static final String CONCLUDE = "conclude";
    static final String VERDICT = "verdict";
    static final String DEFECTS = "defects";
    static final String CHECK = "check";
    static final String PART = "part";
    static final String AT = "at";

    private StatementKeys() {}
}
