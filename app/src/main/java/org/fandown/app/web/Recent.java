package org.fandown.app.web;

import java.util.LinkedHashMap;
import java.util.Map;

/** What was touched last, and no more than so many. Not safe for use by several threads. */
final class Recent<T> extends LinkedHashMap<String, T> {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 10_000;
    private static final float FULL = 0.75f;

    Recent() {
        super(16, FULL, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
        return size() > MOST;
    }
}
