/**
 * Weighs evidence against the rules in force. {@link org.fandown.judgement.Judge} turns one
 * inspection into a {@link org.fandown.judgement.Judgement}: a {@link
 * org.fandown.judgement.Finding} for each rule, the {@link org.fandown.judgement.Defect}s that
 * follow, and a {@link org.fandown.check.Verdict}. It knows neither the practice truck nor the
 * plan: it sees only what was written down.
 */
@NullMarked
package org.fandown.judgement;

import org.jspecify.annotations.NullMarked;
