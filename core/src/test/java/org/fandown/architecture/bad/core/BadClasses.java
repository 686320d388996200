package org.fandown.architecture.bad.core;

import java.time.Clock;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.StringJoiner;
import java.util.UUID;

/** Uses classes that the core must not use. */
public abstract class BadClasses {
    Map<String, String> map() {
        return new HashMap<>();
    }

    Set<String> set() {
        return new HashSet<>();
    }

    int chance() {
        return new Random(1).nextInt(6);
    }

    String shout(String text) {
        return text.toUpperCase(Locale.ROOT);
    }

    double logarithm(double value) {
        return StrictMath.log(value);
    }

    abstract StringJoiner joiner();

    abstract Clock clock();

    abstract Thread[] threads();

    abstract UUID id();
}
