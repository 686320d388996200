package org.fandown.rulebook;

import org.fandown.check.Check;
import org.fandown.check.PlaceCode;

/**
 * A check for which a place has no rule known to us.
 *
 * @param place the place
 * @param check the check
 * @param says what was looked for and found wanting
 */
public record Gap(PlaceCode place, Check check, String says) {}
