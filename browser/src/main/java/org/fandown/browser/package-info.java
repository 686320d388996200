/**
 * What the pages can ask of the core: a thin layer of exported functions that take and give texts
 * (JSON, the same as files and the command line use) and arrays of numbers. Compiled to WebAssembly
 * together with the core; nothing is decided here.
 */
@NullMarked
package org.fandown.browser;

import org.jspecify.annotations.NullMarked;
