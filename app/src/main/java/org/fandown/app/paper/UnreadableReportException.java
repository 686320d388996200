package org.fandown.app.paper;

/** A document cannot be looked at; the message says why and what to do. */
public final class UnreadableReportException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableReportException(String message, Throwable cause) {
        super(message, cause);
    }
}
