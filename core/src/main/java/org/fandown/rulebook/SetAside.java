package org.fandown.rulebook;

/**
 * A rule that would apply to the vehicle but is not applied.
 *
 * @param ruling the rule
 * @param reason why not
 * @param by id of the rule applied instead
 * @param settled whether the other rule decides alone
 */
public record SetAside(Ruling ruling, Reason reason, String by, boolean settled) {

    /** Why a rule is not applied. */
    public enum Reason {
        /** A rule of a nearer place says it overrides it. */
        OVERRIDDEN,
        /** Another source says otherwise and is applied. */
        CONFLICT,
        /** It is remembered only, and published text on the same check is known. */
        PUBLISHED_TEXT_KNOWN
    }
}
