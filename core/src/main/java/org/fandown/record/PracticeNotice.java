package org.fandown.record;

/** What has to be said of a judgement whose evidence comes from a simulated vehicle. */
public final class PracticeNotice {
    /** One word for it, to stand before a verdict. */
    public static final String WORD = "Simulated";

    /** The whole of it. */
    public static final String TEXT =
            "Practice on a simulated vehicle: this is not a record of a real vehicle, and proves"
                    + " nothing about one.";

    private PracticeNotice() {}
}
