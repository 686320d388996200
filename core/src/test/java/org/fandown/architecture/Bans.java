package org.fandown.architecture;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads lists of banned names. */
final class Bans {
    private Bans() {}

    /** Reads lines of the form {@code reason: name name name}. */
    static Map<String, String> reasonsByName(List<String> lines) {
        Map<String, String> reasons = new TreeMap<>();
        for (String line : lines) {
            int colon = line.indexOf(": ");
            for (String name : line.substring(colon + 2).split(" ", -1)) {
                reasons.put(name, line.substring(0, colon));
            }
        }
        return reasons;
    }
}
