package org.fandown.rulebook;

/** Whether an inspection has to bring evidence for a rule. */
public enum EvidenceDemand {
    /** A missing reading leaves the vehicle not proven. */
    ASKED,
    /** Judged only where something was noted. */
    IF_OBSERVED
}
