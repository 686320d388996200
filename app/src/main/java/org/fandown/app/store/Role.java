package org.fandown.app.store;

/** What somebody may do at a site; the table of it is at home with the server. */
public enum Role {
    /** Practises. */
    LEARNER("learner"),
    /** Inspects, and reviews what was found. */
    DRIVER("driver"),
    /** Teaches; may do what a driver may. */
    INSTRUCTOR("instructor"),
    /** Inspects, and settles defects. */
    MECHANIC("mechanic"),
    /** May do all, and looks after the accounts. */
    SITE_MANAGER("site manager");

    private final String title;

    Role(String title) {
        this.title = title;
    }

    /** Its name as people read it. */
    public String title() {
        return title;
    }
}
