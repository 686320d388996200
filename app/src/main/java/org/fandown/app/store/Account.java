package org.fandown.app.store;

/**
 * Somebody who may log in. Accounts are closed and never deleted, so that a name stays with whom it
 * was given to.
 *
 * @param number from 1 in the order they were added
 * @param name as it is shown; no other account has it, whatever the case
 * @param role what they may do
 * @param made when it was added, UTC, such as {@code 2026-11-30T11:40:00.000Z}
 * @param closed when it was closed, in the same form; empty while it is open
 */
public record Account(long number, String name, Role role, String made, String closed) {
    /** Whether it can be used. */
    public boolean isOpen() {
        return closed.isEmpty();
    }
}
