package org.fandown.procedure;

import java.util.List;

/** One thing a person does in an order of work: a check, or work that prepares for one. */
public sealed interface Step permits WorkStep, CheckStep {
    /** The text form, as orders write it: {@code governor-cut-in}, {@code fan-down: 60 psi}. */
    String text();

    /** What is done, in sentence case, as an order. */
    String action();

    /** What can hurt somebody, empty text if nothing. */
    String caution();

    /** What has to hold before. */
    List<Need> needs();
}
