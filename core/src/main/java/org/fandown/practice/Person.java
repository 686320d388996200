package org.fandown.practice;

/** Where the person stands, and whether somebody else sits in the cab. */
final class Person {
    private Station station = Station.FRONT;
    private boolean helper;

    Station station() {
        return station;
    }

    void goTo(Station place) {
        station = place;
    }

    boolean helper() {
        return helper;
    }

    void helper(boolean inCab) {
        helper = inCab;
    }

    boolean inCab() {
        return station.equals(Station.CAB);
    }

    /** Whether there is nobody at the pedals. */
    boolean cabIsEmpty() {
        return !helper && !inCab();
    }
}
