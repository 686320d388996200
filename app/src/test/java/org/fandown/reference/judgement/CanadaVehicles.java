package org.fandown.reference.judgement;

/** Vehicles of our own invention for worked examples of Canada. */
final class CanadaVehicles {
    private static final String AXLE =
            """
                  - { brake: drum, chamber: clamp 30, spring-brake: yes }
            """;

    /** A straight truck of two axles: four brakes, the rear ones clamp 30. */
    static final String TRUCK = truck("clamp 30", "yes");

    /** The same without an odometer. */
    static final String TRUCK_WITHOUT_ODOMETER = truck("clamp 30", "no");

    /** The truck with a larger chamber on the left of its steering axle. */
    static final String TRUCK_WITH_ODD_STEER_CHAMBER =
            TRUCK.replace("position: steer,", "position: steer, left: { chamber: clamp 24 },");

    /** The truck with a smaller chamber on the left of its drive axle. */
    static final String TRUCK_WITH_ODD_DRIVE_CHAMBER =
            TRUCK.replace("position: drive,", "position: drive, left: { chamber: clamp 24 },");

    /** A tractor of three axles and a semitrailer of two: ten brakes, two units with air brakes. */
    static final String TRACTOR_TRAILER = tractor() + trailer("S1") + AXLE + AXLE;

    /** A tractor with two semitrailers, the second on a dolly: three vehicles with air brakes. */
    static final String DOUBLES =
            tractor()
                    + trailer("S1")
                    + AXLE
                    + """
                      - kind: dolly
                        id: D1
                        gross-mass: 9000 kg
                        axles:
                    """
                    + AXLE
                    + trailer("S2")
                    + AXLE;

    private CanadaVehicles() {}

    /** A straight truck with other chambers on its rear axle. */
    static String truckWithRear(String chamber) {
        return truck(chamber, "yes");
    }

    private static String truck(String rear, String odometer) {
        return """
        name: Yard truck
        use: property
        units:
          - kind: truck
            id: T1
            built: 2019-04-09
            abs: yes
            gross-mass: 15000 kg
            odometer: %s
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: %s, spring-brake: yes }
        """
                .formatted(odometer, rear);
    }

    private static String tractor() {
        return """
        name: Yard tractor with what it pulls
        use: property
        units:
          - kind: tractor
            id: T1
            built: 2019-04-09
            abs: yes
            gross-mass: 20000 kg
            axles:
              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
        """;
    }

    private static String trailer(String id) {
        return """
          - kind: trailer
            id: %s
            built: 2019-04-09
            abs: yes
            gross-mass: 15000 kg
            axles:
        """
                .formatted(id);
    }
}
