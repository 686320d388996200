package org.fandown.judgement;

/**
 * What the evidence says about one rule. Ordered from good to bad for choosing the worse of two.
 */
public enum Status {
    /** The vehicle, the wheel or the report does not come under the rule. */
    NOT_APPLICABLE,
    /** The whole interval of the measured value passes. */
    MET,
    /** Nothing was noted. */
    NOT_CHECKED,
    /** It was measured under circumstances the rule does not allow. */
    SPOILED,
    /** The interval of the measured value straddles the limit, or something needed is not known. */
    UNDETERMINED,
    /** The whole interval of the measured value fails. */
    NOT_MET;

    /** The worse of two. */
    Status worse(Status other) {
        return other.compareTo(this) > 0 ? other : this;
    }
}
