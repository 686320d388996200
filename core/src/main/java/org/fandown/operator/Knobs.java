package org.fandown.operator;

/** Both knobs as they stood, to be put back after a check that works them. */
final class Knobs {
    private static final double SETTLES = 3;

    private final Person person;
    private final boolean parked;
    private final boolean supplied;

    private Knobs(Person person) {
        this.person = person;
        parked = person.cab().parked();
        supplied = person.cab().hasTrailerSupply() && person.cab().trailerSupplyIn();
    }

    /** Notes how they stand. */
    static Knobs noted(Person person) {
        return new Knobs(person);
    }

    /** Sets or releases the parking brakes, if they are not so already. */
    void parking(boolean set) {
        if (person.cab().parked() != set) {
            person.cab().parking(set);
            person.pass(SETTLES);
        }
    }

    /** Shuts the trailer supply, if it is open. */
    void shutSupply() {
        if (person.cab().hasTrailerSupply() && person.cab().trailerSupplyIn()) {
            person.cab().trailerSupply(false);
            person.pass(SETTLES);
        }
    }

    /** Puts both back. */
    void restore() {
        parking(parked);
        if (supplied && !person.cab().trailerSupplyIn()) {
            person.cab().trailerSupply(true);
            person.pass(SETTLES);
        }
    }
}
