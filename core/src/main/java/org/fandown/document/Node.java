package org.fandown.document;

/**
 * One value of a document: a map, a list or a scalar. Nodes know where they were read and by which
 * path they are reached from the top, so that every refusal can name the place.
 */
public sealed interface Node permits MapNode, ListNode, ScalarNode {
    /** Returns where the value begins; {@link Position#NONE} if it was built in memory. */
    Position at();

    /**
     * Returns the path from the top, such as {@code readings.build-up.time} or {@code
     * axles[2].brake}; empty for the top itself and for what was built in memory.
     */
    String path();

    /** Returns what the node is, in words with an article, such as {@code a list}. */
    String phrase();
}
