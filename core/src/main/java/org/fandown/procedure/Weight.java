package org.fandown.procedure;

/** What it means when a need is not met. */
public enum Weight {
    /** Somebody can be hurt. */
    SAFETY("dangerous"),
    /** The step cannot be done at all. */
    POSSIBLE("not possible"),
    /** The step can be done, but says nothing about the vehicle. */
    SPOILS("spoiled"),
    /** The rules of the place ask for it. */
    RULE("against the rule");

    private final String title;

    Weight(String title) {
        this.title = title;
    }

    /** In a word or two. */
    public String title() {
        return title;
    }
}
