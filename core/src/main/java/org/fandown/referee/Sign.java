package org.fandown.referee;

/**
 * Something the vehicle showed by itself.
 *
 * @param tick when
 * @param kind what
 */
record Sign(long tick, Kind kind) {
    enum Kind {
        CUT_OUT("the compressor did not cut out"),
        CUT_IN("the compressor did not cut in"),
        WARNING("the low-air warning did not come on"),
        PARKING_OUT("the parking knob did not come out"),
        TRAILER_OUT("the trailer supply knob did not come out");

        private final String absent;

        Kind(String absent) {
            this.absent = absent;
        }

        /** What is said if it did not happen, a clause. */
        String absent() {
            return absent;
        }
    }
}
