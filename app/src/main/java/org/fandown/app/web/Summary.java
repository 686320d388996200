package org.fandown.app.web;

import org.fandown.document.Node;
import org.jspecify.annotations.Nullable;

/**
 * What a record says in short, as it was found here.
 *
 * @param place code of the place whose rules it is about
 * @param vehicle the vehicle's name
 * @param verdict what came of it, in words
 * @param words plates, names and the like, which it can be found by too
 * @param judgement the whole of what was found, null if there is nothing to judge
 * @param chain the key of the chain it belongs to
 */
record Summary(
        String place,
        String vehicle,
        String verdict,
        String words,
        @Nullable Node judgement,
        String chain) {}
