package org.fandown.rulebook;

/** What weight a rule has in a verdict. */
public enum Standing {
    /** Counts for the verdict. */
    REQUIRED,
    /** Reported, never decides. */
    ADVISORY,
    /** A limit nobody has confirmed: failing it leaves the vehicle not proven, never not fit. */
    UNCONFIRMED,
    /**
     * Asked of a new vehicle by its maker; judged only where somebody measured it, never decides.
     */
    NEW_VEHICLE,
    /** No longer in force; listed only. */
    HISTORIC,
    /** A duty of a person or firm; listed only. */
    DUTY;

    /** Whether a finding under this standing can change the verdict. */
    public boolean decides() {
        return this == REQUIRED || this == UNCONFIRMED;
    }

    /** Whether readings are judged under this standing at all. */
    public boolean isJudged() {
        return this != HISTORIC && this != DUTY;
    }
}
