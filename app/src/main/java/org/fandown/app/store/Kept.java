package org.fandown.app.store;

/** What became of a record that was sent to be kept. */
public enum Kept {
    /** It is kept from now on. */
    NEW,
    /** The very same was kept before; sending twice does no harm. */
    BEFORE,
    /** Another with the same id was kept before; this one is not. */
    CONFLICT
}
