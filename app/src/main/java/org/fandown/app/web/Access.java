package org.fandown.app.web;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.app.store.Role;

/**
 * Who may ask for what, in one table: each request by its method and the pattern of its path. What
 * is not in it is denied to everybody. Files of the site, which hold nothing of anybody, are for
 * anyone.
 */
final class Access {
    private static final Set<Role> ALL = EnumSet.allOf(Role.class);
    private static final Set<Role> READERS = EnumSet.complementOf(EnumSet.of(Role.LEARNER));
    private static final Set<Role> MANAGER = EnumSet.of(Role.SITE_MANAGER);
    private static final Entry ANYONE = new Entry(true, ALL);

    private static final Map<String, Entry> TABLE =
            Map.ofEntries(
                    Map.entry("GET /api/health", ANYONE),
                    Map.entry("GET /api/me", ANYONE),
                    Map.entry("POST /api/log-in", ANYONE),
                    Map.entry("POST /api/log-out", only(ALL)),
                    Map.entry("POST /api/me/password", only(ALL)),
                    Map.entry("POST /api/vehicle-file", only(ALL)),
                    // Of these, RecordRights says which records.
                    Map.entry("POST /api/records", only(ALL)),
                    Map.entry("GET /api/records", only(ALL)),
                    Map.entry("GET /api/records/{id}", only(ALL)),
                    Map.entry("GET /api/records/{id}/report.pdf", only(ALL)),
                    Map.entry("GET /api/records/{id}/seal", only(ALL)),
                    Map.entry("GET /api/records/{id}/defects", only(READERS)),
                    Map.entry("GET /api/records/{id}/hand-over.zip", only(READERS)),
                    Map.entry("GET /api/records/{id}/code.svg", only(READERS)),
                    Map.entry("GET /api/defects", only(READERS)),
                    // For whoever was shown the code, such as an officer at the roadside.
                    Map.entry("GET /r/{code}", ANYONE),
                    Map.entry("GET /api/accounts", only(MANAGER)),
                    Map.entry("POST /api/accounts", only(MANAGER)),
                    Map.entry("POST /api/accounts/{number}/role", only(MANAGER)),
                    Map.entry("POST /api/accounts/{number}/password", only(MANAGER)),
                    Map.entry("POST /api/accounts/{number}/close", only(MANAGER)),
                    Map.entry("GET /api/audit", only(MANAGER)));

    private final Set<String> files;

    /**
     * The table with the files of the site.
     *
     * @param files their paths
     */
    Access(Set<String> files) {
        this.files = files;
    }

    /**
     * Who may.
     *
     * @param nobody whether also who is not logged in
     * @param roles which of those who are
     */
    record Entry(boolean nobody, Set<Role> roles) {
        boolean allows(Optional<Role> role) {
            return role.map(roles::contains).orElse(nobody);
        }
    }

    private static Entry only(Set<Role> roles) {
        return new Entry(false, roles);
    }

    /** Who may ask for this, empty if it is not in the table. */
    Optional<Entry> entry(String method, String pattern) {
        if (method.equals("GET") && files.contains(pattern)) {
            return Optional.of(ANYONE);
        }
        return Optional.ofNullable(TABLE.get(method + " " + pattern));
    }
}
