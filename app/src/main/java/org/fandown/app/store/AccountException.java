package org.fandown.app.store;

/** A change of accounts that is refused; the message says what to do instead. */
public final class AccountException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    AccountException(String message) {
        super(message);
    }
}
