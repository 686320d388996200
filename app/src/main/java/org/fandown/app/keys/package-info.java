/**
 * What only the site knows, and what others can check with what it tells them: its key, by which it
 * signs what it prints, and the passwords of its people. The one place that knows the library for
 * it.
 */
@NullMarked
package org.fandown.app.keys;

import org.jspecify.annotations.NullMarked;
