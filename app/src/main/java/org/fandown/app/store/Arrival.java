package org.fandown.app.store;

import org.fandown.document.Node;
import org.jspecify.annotations.Nullable;

/**
 * A record that arrives to be kept.
 *
 * @param head what it is found by
 * @param content the whole record
 * @param judgement what the judge made of it now, null if nothing was judged
 * @param chain the key of its vehicle's chain
 * @param sender the account that sent it, empty where there are none
 */
public record Arrival(
        RecordHead head, Node content, @Nullable Node judgement, String chain, String sender) {}
