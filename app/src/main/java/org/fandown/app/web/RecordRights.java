package org.fandown.app.web;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.Role;

/** Who may keep and read which records. */
final class RecordRights {
    private static final String PRACTICE = "practice";

    private static final String NONE = "none";

    private static final Map<String, Set<Role>> KEEP =
            Map.of(
                    PRACTICE,
                    EnumSet.allOf(Role.class),
                    "inspection",
                    EnumSet.complementOf(EnumSet.of(Role.LEARNER)),
                    "repair",
                    EnumSet.of(Role.MECHANIC, Role.SITE_MANAGER),
                    "review",
                    EnumSet.of(Role.DRIVER, Role.INSTRUCTOR, Role.SITE_MANAGER));

    private RecordRights() {}

    /** Whether somebody may have a record of this kind kept. */
    static boolean mayKeep(Caller caller, String kind) {
        return caller.alone()
                || caller.role().map(KEEP.getOrDefault(kind, Set.of())::contains).orElse(false);
    }

    /** Whether somebody may read this record: a learner only what they practised themselves. */
    static boolean mayRead(Caller caller, KeptRecord kept) {
        boolean own = kept.seal().sender().equals(caller.name());
        return !onlyOwn(caller) || (own && kept.head().kind().equals(PRACTICE));
    }

    /** Whether somebody reads only what they practised themselves. */
    static boolean onlyOwn(Caller caller) {
        return !caller.alone() && caller.role().map(Role.LEARNER::equals).orElse(true);
    }

    /**
     * The kinds among which somebody finds their own who reads only those.
     *
     * @param asked which they asked for, empty for any
     */
    static List<String> ownKinds(List<String> asked) {
        return List.of(asked.isEmpty() || asked.contains(PRACTICE) ? PRACTICE : NONE);
    }
}
