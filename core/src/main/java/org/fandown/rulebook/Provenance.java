package org.fandown.rulebook;

/** How well a rule is known. */
public enum Provenance {
    /** The text of the law or handbook was read. */
    PUBLISHED("published"),
    /** Somebody else's account of the text was read. */
    PUBLISHED_SECONDHAND("published, second-hand"),
    /** Done so in the trade; no text is known. */
    COMMON_PRACTICE("common practice, no source"),
    /** Remembered; nobody has compared it with the text. */
    FROM_MEMORY("from memory, not compared with the text");

    private final String title;

    Provenance(String title) {
        this.title = title;
    }

    /** Whether it rests on a text that somebody read. */
    public boolean isText() {
        return this == PUBLISHED || this == PUBLISHED_SECONDHAND;
    }

    /** How it is shown to a person. */
    public String title() {
        return title;
    }
}
