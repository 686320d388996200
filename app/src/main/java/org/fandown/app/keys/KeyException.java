package org.fandown.app.keys;

/** A key or certificate cannot be made, read or used; the message says what to do. */
public final class KeyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    KeyException(String message, Throwable cause) {
        super(message, cause);
    }
}
