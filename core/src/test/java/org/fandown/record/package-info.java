/** Tests of what is written down of a judgement and of rules: stable keys, dates, summaries. */
@NullMarked
package org.fandown.record;

import org.jspecify.annotations.NullMarked;
