package org.fandown.app.store;

/**
 * How the store is.
 *
 * @param works whether it can be read and written now
 * @param records how many records are kept, 0 if that cannot be told
 */
public record StoreState(boolean works, long records) {}
