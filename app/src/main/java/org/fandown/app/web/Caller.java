package org.fandown.app.web;

import io.javalin.http.Context;
import java.util.Optional;
import org.fandown.app.store.Account;
import org.fandown.app.store.Role;

/**
 * Who asks.
 *
 * @param account whose session it is, empty if there is none
 * @param token of the session, empty without one
 * @param alone whether the site has no accounts: then whoever is at this machine may do all
 * @param source the address of the device
 */
record Caller(Optional<Account> account, String token, boolean alone, String source) {
    private static final String KEY = "caller";

    /** Notes for the rest of this request who asks. */
    void putInto(Context ctx) {
        ctx.attribute(KEY, this);
    }

    /** Who asks; known once {@link Guard} let the request in. */
    static Caller of(Context ctx) {
        Caller caller = ctx.attribute(KEY);
        if (caller == null) {
            throw new IllegalStateException("The guard did not see this request.");
        }
        return caller;
    }

    /** Their role, empty if nobody is logged in. */
    Optional<Role> role() {
        return account.map(Account::role);
    }

    /** The name of their account, empty if nobody is logged in. */
    String name() {
        return account.map(Account::name).orElse("");
    }

    /** The account of somebody who is known to be logged in. */
    Account self() {
        return account.orElseThrow();
    }
}
