package org.fandown.app.web;

/** The server would be open to others, and nobody has an account. */
public final class OpenSiteException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OpenSiteException(Listening at) {
        super(
                "Others could come to "
                        + at.publicUrl()
                                .map(Object::toString)
                                .orElseGet(() -> at.address().getHostAddress())
                        + ", but this site has no accounts, so that each of them could do all. Next:"
                        + " 'fandown account add NAME --role site-manager', with the same --data,"
                        + " then start the pages again.");
    }
}
