package org.fandown.reference.judgement;

/** Vehicles of our own invention for worked examples from outside North America. */
final class OverseasVehicles {
    /** A truck of two axles with spring brakes on the second. */
    static final String TRUCK = truck("");

    /** The same, built to ADR 35. */
    static final String ADR_35_TRUCK = truck("standard: adr-35\n");

    /** A bus of two axles. */
    static final String BUS =
            """
            name: Yard bus
            use: passenger
            units:
              - kind: bus
                id: B1
                built: 2018-05-14
                axles:
                  - { position: steer, brake: disc, chamber: clamp 24, spring-brake: no }
                  - { position: drive, brake: disc, chamber: clamp 24, spring-brake: yes }
            """;

    /** A tractor alone. */
    static final String TRACTOR = tractor();

    /** A tractor with two trailers, the second on a converter dolly. */
    static final String TWO_TRAILERS =
            tractor()
                    + trailer("S1")
                    + """
                      - kind: dolly
                        id: D1
                        built: 2018-05-14
                        axles:
                          - { brake: drum, chamber: clamp 30, spring-brake: yes }
                    """
                    + trailer("S2");

    private OverseasVehicles() {}

    /** A truck whose second axle has chambers with a marked full stroke. */
    static String truckWithStroke(String full) {
        return """
        name: Yard truck
        use: property
        units:
          - kind: truck
            id: T1
            built: 2018-05-14
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - position: drive
                brake: drum
                chamber: { mount: other, type: U7, rated-stroke: %s }
                spring-brake: yes
        """
                .formatted(full);
    }

    private static String truck(String more) {
        return """
        name: Yard truck
        use: property
        units:
          - kind: truck
            id: T1
            built: 2018-05-14
        %s    axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
        """
                .formatted(more.indent(4));
    }

    private static String tractor() {
        return """
        name: Yard combination
        use: property
        units:
          - kind: tractor
            id: T1
            built: 2018-05-14
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
        """;
    }

    private static String trailer(String id) {
        return """
          - kind: trailer
            id: %s
            built: 2018-05-14
            axles:
              - { brake: drum, chamber: clamp 30, spring-brake: yes }
              - { brake: drum, chamber: clamp 30, spring-brake: yes }
        """
                .formatted(id);
    }
}
