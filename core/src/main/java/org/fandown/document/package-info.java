/**
 * A neutral tree of maps, lists and scalars that knows the place and path of each of its values.
 *
 * <p>A document is a {@link org.fandown.document.Node}: a {@link org.fandown.document.MapNode}, a
 * {@link org.fandown.document.ListNode} or a {@link org.fandown.document.ScalarNode}, each with its
 * {@link org.fandown.document.Position}. {@link org.fandown.document.Json} reads and writes them,
 * and {@link org.fandown.document.Tree} builds them for output.
 *
 * <p>Loaders take a document apart with {@link org.fandown.document.Fields}, key by key, and with
 * {@link org.fandown.document.Values}, node by node. Whatever is wrong is raised as the one {@link
 * org.fandown.document.DocumentException}. {@link org.fandown.document.Names} gives constants their
 * names in documents.
 */
@NullMarked
package org.fandown.document;

import org.jspecify.annotations.NullMarked;
