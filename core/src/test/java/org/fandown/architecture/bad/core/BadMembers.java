package org.fandown.architecture.bad.core;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Uses members that the core must not use. */
@SuppressWarnings({"JavaTimeDefaultTimeZone", "StringCaseLocaleUsage", "SystemOut"})
public abstract class BadMembers {
    long round(double value) {
        return Math.round(value);
    }

    double power(double value) {
        return Math.pow(value, 1.4);
    }

    long clock() {
        return System.currentTimeMillis();
    }

    void print(String text) {
        System.out.println(text);
    }

    Class<?> named(String name) throws ClassNotFoundException {
        return Class.forName(name);
    }

    String format(int value) {
        return String.format("%d psi", value);
    }

    Stream<String> lines(String text) {
        return text.lines();
    }

    Function<String, String> lower() {
        return String::toLowerCase;
    }

    long seconds(Duration duration) {
        return duration.toSeconds();
    }

    LocalDate epoch() {
        return LocalDate.EPOCH.isAfter(LocalDate.MIN) ? LocalDate.now() : LocalDate.MAX;
    }

    LocalDate today() {
        return LocalDate.now(ZoneOffset.UTC);
    }

    Map<String, String> copy(Map<String, String> map) {
        return Map.copyOf(map);
    }

    Set<String> pair() {
        return Set.of("left", "right");
    }

    Set<String> collected(List<String> names) {
        return names.stream().collect(Collectors.toSet());
    }

    Stream<String> many(List<String> names) {
        return names.parallelStream();
    }

    String text(double value) {
        return Double.toString(value);
    }

    int bucket(String name) {
        return name.hashCode() + Objects.hash(name, 1);
    }
}
