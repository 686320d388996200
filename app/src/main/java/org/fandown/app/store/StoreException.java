package org.fandown.app.store;

import org.jspecify.annotations.Nullable;

/** The store cannot be opened or used; the message says what to do. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StoreException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
