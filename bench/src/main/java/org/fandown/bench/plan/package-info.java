/** Planning the order of work. */
@NullMarked
package org.fandown.bench.plan;

import org.jspecify.annotations.NullMarked;
