package org.fandown.app.web;

/** The server cannot listen where it should. */
public final class PortTakenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PortTakenException(int port, Throwable cause) {
        super(
                "Port "
                        + port
                        + " cannot be used; most likely another program has it. Next: stop that"
                        + " program, or name another port with --port, 0 for any that is free.",
                cause);
    }
}
