package org.fandown.app.store;

import java.util.Optional;

/**
 * What going through a whole store showed.
 *
 * @param records how many records were found in order before anything that is broken
 * @param end hash of the last of their seals, empty if there is none; whoever has noted it can tell
 *     later that nothing before it was changed or left out
 * @param problem the first thing that is broken, empty if all is well
 */
public record StoreCheck(long records, String end, Optional<String> problem) {}
