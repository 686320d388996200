package org.fandown.reference.judgement;

/** Vehicles of our own invention for worked examples of the United States. */
final class UnitedStatesVehicles {
    /** A straight truck of two axles. */
    static final String TRUCK = truck("2019-04-09");

    /** A bus of two axles. */
    static final String BUS =
            """
            name: Yard bus
            use: passenger
            units:
              - kind: bus
                id: B1
                built: 2019-04-09
                gross-mass: 36000 lb
                seats: 45
                axles:
                  - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                  - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
            """;

    /** A tractor of three axles and a semitrailer of two: ten brakes, 80,000 lb. */
    static final String TRACTOR_TRAILER = tractor() + trailer("S1", 2);

    /** The same with a trailer of three axles: twelve brakes. */
    static final String TRACTOR_TRIAXLE = tractor() + trailer("S1", 3);

    /** A tractor with two trailers, the second on a converter dolly. */
    static final String DOUBLES =
            tractor()
                    + trailer("S1", 1)
                    + """
                      - kind: dolly
                        id: D1
                        built: 2019-04-09
                        gross-mass: 3000 lb
                        axles:
                          - { brake: drum, chamber: clamp 30, spring-brake: yes }
                    """
                    + trailer("S2", 1);

    private UnitedStatesVehicles() {}

    /** A straight truck of two axles, built on the day. */
    static String truck(String built) {
        return """
        name: Yard truck
        use: property
        units:
          - kind: truck
            id: T1
            built: %s
            gross-mass: 33000 lb
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
        """
                .formatted(built);
    }

    /**
     * A straight truck with the given axles, written as a YAML list.
     *
     * @param axles one entry for each axle
     */
    static String truckWithAxles(String axles) {
        return """
        name: Yard truck
        use: property
        units:
          - kind: truck
            id: T1
            built: 2019-04-09
            gross-mass: 33000 lb
            axles:
        """
                + axles.indent(6);
    }

    private static String tractor() {
        return """
        name: Yard tractor with trailers
        use: property
        units:
          - kind: tractor
            id: T2
            built: 2019-04-09
            gross-mass: 46000 lb
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
        """;
    }

    private static String trailer(String id, int axles) {
        String unit =
                """
                  - kind: trailer
                    id: %s
                    built: 2019-04-09
                    gross-mass: 34000 lb
                    axles:
                """
                        .formatted(id);
        return unit
                + "      - { brake: drum, chamber: clamp 30, spring-brake: yes }\n".repeat(axles);
    }
}
