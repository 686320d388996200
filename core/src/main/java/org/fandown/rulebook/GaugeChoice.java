package org.fandown.rulebook;

/** Which needle counts where two gauges were read. */
public enum GaugeChoice {
    /** The higher reading decides. */
    HIGHEST,
    /** The lower reading decides. */
    LOWEST,
    /** Every reading has to satisfy the rule. */
    EACH
}
