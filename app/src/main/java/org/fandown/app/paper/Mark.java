package org.fandown.app.paper;

import org.fandown.check.Verdict;
import org.fandown.judgement.Status;

/** Mark and word of a status. Marks differ in shape, so that they can be told apart in black. */
enum Mark {
    YES("\u2713", "yes"),
    NO("\u2717", "no"),
    OPEN("?", "open"),
    SPOILED("\u26a0", "spoiled"),
    NONE("\u25cb", "none"),
    APART("\u2013", "none");

    private final String sign;
    private final String css;

    Mark(String sign, String css) {
        this.sign = sign;
        this.css = css;
    }

    static Mark of(Status status) {
        return switch (status) {
            case MET -> YES;
            case NOT_MET -> NO;
            case UNDETERMINED -> OPEN;
            case SPOILED -> SPOILED;
            case NOT_CHECKED -> NONE;
            case NOT_APPLICABLE -> APART;
        };
    }

    static Mark of(Verdict verdict) {
        return switch (verdict) {
            case FIT_TO_MOVE -> YES;
            case NOT_FIT_TO_MOVE -> NO;
            case NOT_PROVEN -> OPEN;
        };
    }

    /** The word of a status. */
    static String word(Status status) {
        return switch (status) {
            case MET -> "met";
            case NOT_MET -> "not met";
            case UNDETERMINED -> "undetermined";
            case SPOILED -> "spoiled";
            case NOT_CHECKED -> "not checked";
            case NOT_APPLICABLE -> "not applicable";
        };
    }

    String sign() {
        return sign;
    }

    /** Adds the sign in its box. */
    void addTo(Tag parent) {
        parent.add("span", "mark " + css).text(sign);
    }

    String css() {
        return css;
    }
}
