package org.fandown.app.web;

import java.util.ArrayList;
import java.util.List;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.AuditTrail;

/** What one request adds to the audit trail. */
final class Notes {
    private final Caller caller;
    private final List<AuditEntry> entries = new ArrayList<>();

    Notes(Caller caller) {
        this.caller = caller;
    }

    /** Notes what was done or tried. */
    Notes add(String act, String about, String result) {
        entries.add(new AuditEntry(caller.name(), act, about, caller.source(), result));
        return this;
    }

    void keepIn(AuditTrail trail) {
        trail.note(entries);
    }
}
