package org.fandown.app.paper;

/** A report that could not be written. Nothing is left behind where it should have stood. */
public final class ReportWriteException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String path;
    private final String nextStep;

    ReportWriteException(String path, String problem, String nextStep) {
        super("The report cannot be written to " + path + ": " + problem + ". Next: " + nextStep);
        this.path = path;
        this.nextStep = nextStep;
    }

    /** Where the report should have been written. */
    public String path() {
        return path;
    }

    /** What to do next, as a sentence. */
    public String nextStep() {
        return nextStep;
    }
}
