package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Area, full stroke and rated volume of brake chambers by mount and type.
 *
 * <p><b>Source.</b> The types are those of 49 CFR 393.47(e), tables of clamp, bolt, rotochamber and
 * dd3 chambers, and of 49 CFR 571.121 Table V (rated volumes; clamp types 14 and 18). For clamp and
 * rotochamber types the number is the nominal area in square inches (Table V, heading). Where a
 * number was not read in a source, its {@link Basis} says so.
 *
 * <p><b>Assumes.</b> Full strokes of long-stroke chambers follow their usual rated stroke; one with
 * another rated stroke carries a mark, which {@link Chamber#ratedStroke} holds.
 *
 * <p><b>Not here.</b> Readjustment limits: they are law and stand in rule packs.
 */
public final class ChamberTable {
    private static final String TABLE_V = "49 CFR 571.121 (FMVSS 121), Table V";
    private static final String TYPE_IS_AREA = TABLE_V + ", heading: type = area in square inches";
    private static final String REMEMBERED = "maintenance literature, not read";
    private static final String REPORTED = "vehicle maintenance literature, second-hand";

    private static final Map<Mount, Map<String, ChamberEntry>> ENTRIES = build();

    private ChamberTable() {}

    /** Returns the entry of a chamber type, empty if the table has none. */
    public static Optional<ChamberEntry> find(Mount mount, String type) {
        Map<String, ChamberEntry> family = ENTRIES.get(mount);
        return family == null ? Optional.empty() : Optional.ofNullable(family.get(type));
    }

    /** Returns the types of a mount in ascending order; none for {@link Mount#OTHER}. */
    public static List<String> types(Mount mount) {
        Map<String, ChamberEntry> family = ENTRIES.get(mount);
        return family == null ? List.of() : List.copyOf(family.keySet());
    }

    /** Returns every entry, mount by mount. */
    public static List<ChamberEntry> entries() {
        List<ChamberEntry> all = new ArrayList<>();
        ENTRIES.values().forEach(family -> all.addAll(family.values()));
        return List.copyOf(all);
    }

    private static Map<Mount, Map<String, ChamberEntry>> build() {
        Map<Mount, Map<String, ChamberEntry>> all = new LinkedHashMap<>();
        all.put(Mount.CLAMP, clamps());
        all.put(Mount.BOLT, bolts());
        all.put(Mount.ROTOCHAMBER, rotochambers());
        all.put(Mount.DD3, family(plain(Mount.DD3, "30", 30, Basis.PUBLISHED, TYPE_IS_AREA)));
        return all;
    }

    /** Table V: rated volume (in3), then the full strokes (in) from and to which it holds. */
    private static Map<String, ChamberEntry> clamps() {
        return family(
                plain(Mount.CLAMP, "6", 6, Basis.PUBLISHED, TYPE_IS_AREA),
                clamp(9, rated(25, 1.75, 2.10), tabled(1.75), Optional.empty()),
                clamp(12, rated(30, 1.75, 2.10), tabled(1.75), remembered(2.25)),
                clamp(14, rated(40, 2.25, 2.70), tabled(2.25), Optional.empty()),
                clamp(16, rated(46, 2.25, 2.70), tabled(2.25), remembered(2.5)),
                clamp(18, rated(50, 2.25, 2.70), tabled(2.25), Optional.empty()),
                clamp(20, rated(54, 2.25, 2.70), tabled(2.25), remembered(2.5)),
                clamp(24, rated(67, 2.50, 3.20), remembered(2.25), remembered(2.5)),
                clamp(30, rated(89, 2.50, 3.20), tabled(2.5), reported(3.0)),
                clamp(36, rated(135, 3.00, 3.60), tabled(3.0), Optional.empty()));
    }

    /** The letters are 393.47(e)'s; which area a letter stands for was not read anywhere. */
    private static Map<String, ChamberEntry> bolts() {
        return family(
                plain(Mount.BOLT, "A", 12, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "B", 24, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "C", 16, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "D", 6, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "E", 9, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "F", 36, Basis.FROM_MEMORY, REMEMBERED),
                plain(Mount.BOLT, "G", 30, Basis.FROM_MEMORY, REMEMBERED));
    }

    private static Map<String, ChamberEntry> rotochambers() {
        Map<String, ChamberEntry> family = new LinkedHashMap<>();
        for (int area : new int[] {9, 12, 16, 20, 24, 30, 36, 50}) {
            String type = Integer.toString(area);
            family.put(type, plain(Mount.ROTOCHAMBER, type, area, Basis.PUBLISHED, TYPE_IS_AREA));
        }
        return family;
    }

    private static Map<String, ChamberEntry> family(ChamberEntry... entries) {
        Map<String, ChamberEntry> family = new LinkedHashMap<>();
        for (ChamberEntry entry : entries) {
            family.put(entry.type(), entry);
        }
        return family;
    }

    private static ChamberEntry clamp(
            int area,
            RatedVolume rated,
            Optional<Cited<Quantity>> full,
            Optional<Cited<Quantity>> longFull) {
        return new ChamberEntry(
                Mount.CLAMP,
                Integer.toString(area),
                new Cited<>((double) area, Basis.PUBLISHED, TYPE_IS_AREA),
                full,
                longFull,
                Optional.of(new Cited<>(rated, Basis.PUBLISHED, TABLE_V)));
    }

    private static ChamberEntry plain(
            Mount mount, String type, int area, Basis basis, String source) {
        return new ChamberEntry(
                mount,
                type,
                new Cited<>((double) area, basis, source),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static RatedVolume rated(double cubicInches, double fromInches, double toInches) {
        return new RatedVolume(
                Quantity.of(cubicInches, Unit.CUBIC_INCH), inches(fromInches), inches(toInches));
    }

    private static Optional<Cited<Quantity>> tabled(double inches) {
        return Optional.of(
                new Cited<>(inches(inches), Basis.PUBLISHED, TABLE_V + ", least full stroke"));
    }

    private static Optional<Cited<Quantity>> reported(double inches) {
        return Optional.of(new Cited<>(inches(inches), Basis.PUBLISHED_SECONDHAND, REPORTED));
    }

    private static Optional<Cited<Quantity>> remembered(double inches) {
        return Optional.of(new Cited<>(inches(inches), Basis.FROM_MEMORY, REMEMBERED));
    }

    private static Quantity inches(double value) {
        return Quantity.of(value, Unit.INCH);
    }
}
