package org.fandown.app.cli;

import java.util.List;

/** What has to be said wherever this work is shown. */
final class Cautions {
    private static final List<String> LINES =
            List.of(
                    "Chock the wheels before anything else; never go under a vehicle that is not chocked.",
                    "Keep clear of push rods and slack adjusters when brakes apply; never open a"
                            + " spring-brake chamber.",
                    "An automatic adjuster out of limit is a symptom of a fault, not a thing to turn.",
                    "Local law, the maker and licensed technicians come first; rule packs can be out of"
                            + " date.");

    private Cautions() {}

    static void print(Screen screen) {
        screen.heading("Cautions");
        LINES.forEach(line -> screen.wrapped("  ", line));
    }
}
