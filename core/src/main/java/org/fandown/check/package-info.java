/**
 * The vocabulary of the trade as this program uses it: what can be established about an air-braked
 * vehicle ({@link org.fandown.check.Check}), which parts a person looks at ({@link
 * org.fandown.check.Component}), under which circumstances something is measured ({@link
 * org.fandown.check.Circumstance}), and what a report may have to hold ({@link
 * org.fandown.check.ReportItem}). Rules and evidence both speak it and so never need to know each
 * other.
 */
@NullMarked
package org.fandown.check;

import org.jspecify.annotations.NullMarked;
