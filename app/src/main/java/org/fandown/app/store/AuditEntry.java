package org.fandown.app.store;

/**
 * One line of the audit trail, without its moment.
 *
 * @param who the account's name, {@link #COMMAND_LINE}, or empty where nobody was logged in
 * @param act what was done or tried, such as {@code log-in}
 * @param about whom or what it was done to: an account's name or a record's id; may be empty
 * @param source from where: the address of the device, or {@link #COMMAND_LINE}
 * @param result {@link #DONE}, or why not
 */
public record AuditEntry(String who, String act, String about, String source, String result) {
    /** Who, and from where, of what is done by a verb. */
    public static final String COMMAND_LINE = "command line";

    /** The result of what succeeded. */
    public static final String DONE = "done";
}
