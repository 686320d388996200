package org.fandown.procedure;

import org.fandown.check.Check;

/**
 * One check has to be made before another, whatever their needs.
 *
 * @param first made first
 * @param second made after it
 * @param why why, a clause
 * @param rule the rule or printed order that asks for it, empty text if it is ours
 */
public record Precedence(Check first, Check second, String why, String rule) {}
