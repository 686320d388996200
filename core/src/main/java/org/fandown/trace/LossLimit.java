package org.fandown.trace;

import org.fandown.check.Check;

/**
 * What a rule allows of an air loss, in numbers.
 *
 * @param check which loss
 * @param rule the rule's id
 * @param words the limit in words
 * @param most the most it allows, psi a minute
 * @param asked how long the test must be held for the rule to be satisfied, s
 */
public record LossLimit(Check check, String rule, String words, double most, double asked) {}
