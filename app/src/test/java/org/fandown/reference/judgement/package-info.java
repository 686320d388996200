/**
 * Worked examples of laws, standards and handbooks, judged through the public interface: {@link
 * org.fandown.reference.judgement.Judged} reads an inspection as a person would write it and holds
 * what the judge says.
 */
@NullMarked
package org.fandown.reference.judgement;

import org.jspecify.annotations.NullMarked;
