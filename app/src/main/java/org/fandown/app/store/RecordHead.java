package org.fandown.app.store;

/**
 * What lists show of a record, and what it is found by.
 *
 * @param id a name that its maker gave it and that no other record has
 * @param kind what it is, such as {@code inspection}
 * @param made when its maker says that it was made, UTC, such as {@code 2026-11-30T11:40:00.000Z}
 * @param received when it arrived, in the same form
 * @param place code of the place whose rules it is about, empty if none
 * @param vehicle the vehicle's name
 * @param verdict the verdict, empty if it has none
 * @param words plates, names and the like, which it can be found by too
 */
public record RecordHead(
        String id,
        String kind,
        String made,
        String received,
        String place,
        String vehicle,
        String verdict,
        String words) {
    /** Puts the mark for what cannot be shown in place of the one character no database keeps. */
    public RecordHead {
        vehicle = vehicle.replace('\0', '\uFFFD');
        words = words.replace('\0', '\uFFFD');
    }
}
