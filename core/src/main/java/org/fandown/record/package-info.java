/**
 * The result of an inspection as a statement that can be kept: {@link
 * org.fandown.record.JudgementDocument} puts a judgement, the duties that follow from it and what
 * the strokes mean into one document with stable keys; {@link org.fandown.record.RulesDocument}
 * does the same for the rules in force.
 */
@NullMarked
package org.fandown.record;

import org.jspecify.annotations.NullMarked;
