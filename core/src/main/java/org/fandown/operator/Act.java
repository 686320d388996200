package org.fandown.operator;

import java.util.Optional;
import org.fandown.practice.OperatorAction;

/**
 * One thing the operator did. The acts of a performance done to the same truck at the same times
 * give the same run again.
 *
 * @param seconds when, since the start
 * @param action what
 * @param refusal why it could not be done, empty if it was
 */
public record Act(double seconds, OperatorAction action, Optional<String> refusal) {}
