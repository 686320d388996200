package org.fandown.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fandown.air.Fault;
import org.fandown.check.Check;
import org.fandown.check.Component;

/** All procedures: of checks, and of parts that are looked at or listened to. */
final class Procedures {
    static final Map<Check, Procedure> CHECKS = checks();
    static final Map<Component, Procedure> PARTS = parts();

    private Procedures() {}

    /** Something that can find a fault, with the name it has in the table. */
    record Named(String name, Procedure procedure) {}

    /** Those that are meant to find a fault. */
    static List<Named> meant(Fault fault) {
        List<Named> meant = new ArrayList<>();
        for (Check check : FaultChecks.checks(fault)) {
            meant.add(named(check));
        }
        for (Component part : FaultChecks.parts(fault)) {
            meant.add(named(part));
        }
        return meant;
    }

    static List<Named> all() {
        List<Named> all = new ArrayList<>();
        CHECKS.keySet().forEach(check -> all.add(named(check)));
        PARTS.keySet().forEach(part -> all.add(named(part)));
        return all;
    }

    private static Named named(Check check) {
        return new Named(check.id(), found(CHECKS.get(check), check.id()));
    }

    private static Named named(Component part) {
        return new Named(part.id(), found(PARTS.get(part), part.id()));
    }

    private static Procedure found(@org.jspecify.annotations.Nullable Procedure it, String id) {
        if (it == null) {
            throw new IllegalStateException("There is no procedure for " + id + ".");
        }
        return it;
    }

    private static Map<Check, Procedure> checks() {
        Map<Check, Procedure> all = new EnumMap<>(Check.class);
        SupplyProcedures.addTo(all);
        DashProcedures.addTo(all);
        BrakeProcedures.addTo(all);
        TowedProcedures.addTo(all);
        return Collections.unmodifiableMap(all);
    }

    private static Map<Component, Procedure> parts() {
        Map<Component, Procedure> all = new EnumMap<>(Component.class);
        BrakeProcedures.addPartsTo(all);
        return Collections.unmodifiableMap(all);
    }
}
