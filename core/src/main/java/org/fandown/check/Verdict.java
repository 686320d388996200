package org.fandown.check;

/** The whole of a judgement. */
public enum Verdict {
    /** Every check the place asks for was made and passed, but for minor defects. */
    FIT_TO_MOVE("fit to move"),
    /** A major defect was found. */
    NOT_FIT_TO_MOVE("not fit to move"),
    /** Something the place asks for is missing, spoiled or too close to call. */
    NOT_PROVEN("not proven");

    private final String title;

    Verdict(String title) {
        this.title = title;
    }

    /** How it is said. */
    public String title() {
        return title;
    }
}
