package org.fandown.app.files;

/** A file that could not be written. Nothing is left behind where it should have stood. */
public final class FileWriteException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String path;
    private final String nextStep;

    FileWriteException(String what, String path, String problem, String nextStep) {
        super(
                "The "
                        + what
                        + " cannot be written to "
                        + path
                        + ": "
                        + problem
                        + ". Next: "
                        + nextStep);
        this.path = path;
        this.nextStep = nextStep;
    }

    /** Where the file should have been written. */
    public String path() {
        return path;
    }

    /** What to do next, as a sentence. */
    public String nextStep() {
        return nextStep;
    }
}
