package org.fandown.procedure;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.Ruling;

/**
 * One check has to be made before another, whatever their needs.
 *
 * @param first made first
 * @param second made after it
 * @param why why, a clause
 * @param rule the rule that asks for it, empty if it is ours
 */
public record Precedence(Check first, Check second, String why, Optional<Ruling> rule) {}
