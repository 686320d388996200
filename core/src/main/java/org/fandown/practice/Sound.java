package org.fandown.practice;

import org.fandown.air.AirOutlet;

/**
 * Air that is heard escaping.
 *
 * @param kind what sort of way it takes
 * @param name name of that way, always the same
 * @param from where it is
 * @param litresPerMinute how much, free air
 * @param level how loud where the person stands: 1 is just heard
 */
public record Sound(
        AirOutlet.Kind kind, String name, Station from, double litresPerMinute, double level) {}
