package org.fandown.contract.store;

import org.fandown.app.store.Arrival;
import org.fandown.app.store.RecordHead;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/** Records of our own invention, as small as can be. */
public final class Arrivals {
    private Arrivals() {}

    /** A record with some content. */
    public static Arrival of(RecordHead head, String json) {
        return new Arrival(
                head,
                Json.read("content.json", json),
                judgement(head.verdict()),
                head.vehicle(),
                "ines");
    }

    /** A record of a vehicle. */
    public static Arrival of(String id, String vehicle) {
        return of(head(id, "2026-11-28T06:00:00Z", vehicle, "XYD 417"), "{\"of\":\"" + id + "\"}");
    }

    /** A head. */
    public static RecordHead head(String id, String made, String vehicle, String words) {
        return new RecordHead(id, "inspection", made, made, "CA-ON", vehicle, "fit to move", words);
    }

    private static Node judgement(String verdict) {
        return Tree.map().put("verdict", verdict).build();
    }
}
