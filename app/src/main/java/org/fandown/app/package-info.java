/** The program that people start; {@code Main} wires the adapters to the core. */
@NullMarked
package org.fandown.app;

import org.jspecify.annotations.NullMarked;
