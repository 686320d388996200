package org.fandown.trace;

/** Reads one line of a candump log into a frame. */
final class CandumpLine {
    private static final int SHORT_ID = 3;
    private static final int LONG_ID = 8;

    /** Digits before the {@code #} of a CAN XL message. */
    private static final int XL_ID = 5;

    private static final int MOST_BYTES = 8;
    private static final int ERROR_FLAG = 0x20000000;
    private static final int LARGEST_ID = 0x3FFFFFFF;
    private static final int ID_BITS = 0x1FFFFFFF;
    private static final byte[] DROP_NOTE = {
        'D', 'R', 'O', 'P', 'C', 'O', 'U', 'N', 'T', ':', ' ', 'd', 'r', 'o', 'p', 'p', 'e', 'd',
        ' '
    };

    private final CanFrame frame;
    private final StampReader stamp = new StampReader();
    private byte[] bytes = new byte[0];
    private int at;
    private int end;
    private long dropped;

    CandumpLine(CanFrame frame) {
        this.frame = frame;
    }

    /** Messages lost, from the last drop note. */
    long dropped() {
        return dropped;
    }

    LineKind read(byte[] buffer, int from, int to) {
        bytes = buffer;
        at = from;
        end = to;
        frame.timed = false;
        frame.nanos = 0;
        skipSpace();
        if (at == end) {
            return LineKind.BLANK;
        }
        if (bytes[at] == 'D' && isDropNote()) {
            return LineKind.DROP_NOTE;
        }
        if (bytes[at] == '(') {
            at = stamp.read(bytes, at + 1, end);
            if (at < 0) {
                return LineKind.BAD_TIME;
            }
            frame.timed = true;
            frame.nanos = stamp.nanos();
            skipSpace();
        }
        return message();
    }

    /** Interface, perhaps the direction, then the identifier and the rest. */
    private LineKind message() {
        if (!skipWord()) {
            return LineKind.NOT_CANDUMP;
        }
        if (end - at > 2 && bytes[at + 1] == 'X' && (bytes[at] == 'R' || bytes[at] == 'T')) {
            for (int i = 0; i < 3; i++) {
                if (!skipWord()) {
                    return LineKind.NOT_CANDUMP;
                }
            }
        }
        int start = at;
        int id = 0;
        while (at < end && Hex.value(bytes[at]) >= 0 && at - start <= LONG_ID) {
            id = (id << 4) | Hex.value(bytes[at]);
            at++;
        }
        int digits = at - start;
        boolean compact = at < end && bytes[at] == '#';
        if (compact && digits == XL_ID) {
            return LineKind.XL_FRAME;
        }
        if (!compact && (at == end || !isSpace(bytes[at]))) {
            return digits >= SHORT_ID ? LineKind.BAD_IDENTIFIER : LineKind.NOT_CANDUMP;
        }
        LineKind kind = identifier(id, digits);
        if (kind != LineKind.FRAME) {
            return kind;
        }
        at++;
        return compact ? compact() : console();
    }

    private LineKind identifier(int id, int digits) {
        boolean longer = digits == LONG_ID;
        if ((!longer && digits != SHORT_ID) || id < 0 || id > LARGEST_ID) {
            return LineKind.BAD_IDENTIFIER;
        }
        if (longer && (id & ERROR_FLAG) != 0) {
            return LineKind.ERROR_FRAME;
        }
        frame.extended = longer;
        frame.identifier = id & ID_BITS;
        return LineKind.FRAME;
    }

    /** Behind the {@code #}: pairs of digits, with points between if one likes. */
    private LineKind compact() {
        if (at < end && bytes[at] == '#') {
            return LineKind.FD_FRAME;
        }
        if (at < end && bytes[at] == 'R') {
            return LineKind.REMOTE_FRAME;
        }
        frame.length = 0;
        frame.data = 0;
        while (at < end && Hex.value(bytes[at]) >= 0) {
            if (frame.length == MOST_BYTES || !pair()) {
                return LineKind.BAD_DATA;
            }
            if (at < end && bytes[at] == '.') {
                at++;
            }
        }
        if (frame.length == MOST_BYTES && end - at > 1 && bytes[at] == '_') {
            at += 2;
        }
        skipSpace();
        if (at < end && (bytes[at] == 'R' || bytes[at] == 'T')) {
            at++;
        }
        skipSpace();
        return at == end ? LineKind.FRAME : LineKind.BAD_DATA;
    }

    /** Behind the identifier: length in square brackets, pairs of digits, perhaps letters. */
    private LineKind console() {
        skipSpace();
        if (end - at < 3 || bytes[at] != '[') {
            return LineKind.NOT_CANDUMP;
        }
        int length = bytes[at + 1] - '0';
        if (bytes[at + 2] != ']') {
            return Hex.isDigit(bytes[at + 2]) ? LineKind.FD_FRAME : LineKind.BAD_DATA;
        }
        if (length < 0 || length > MOST_BYTES) {
            return LineKind.BAD_DATA;
        }
        at += 3;
        skipSpace();
        if (at < end && bytes[at] == 'r') {
            return LineKind.REMOTE_FRAME;
        }
        frame.length = 0;
        frame.data = 0;
        while (frame.length < length) {
            if (!pair() || (at < end && !isSpace(bytes[at]))) {
                return LineKind.BAD_DATA;
            }
            skipSpace();
        }
        return at == end || bytes[at] == '\'' ? LineKind.FRAME : LineKind.BAD_DATA;
    }

    private boolean pair() {
        if (end - at < 2) {
            return false;
        }
        int high = Hex.value(bytes[at]);
        int low = Hex.value(bytes[at + 1]);
        if (high < 0 || low < 0) {
            return false;
        }
        frame.data |= (long) ((high << 4) | low) << (8 * frame.length);
        frame.length++;
        at += 2;
        return true;
    }

    private boolean isDropNote() {
        if (end - at <= DROP_NOTE.length) {
            return false;
        }
        for (int i = 0; i < DROP_NOTE.length; i++) {
            if (bytes[at + i] != DROP_NOTE[i]) {
                return false;
            }
        }
        int place = at + DROP_NOTE.length;
        dropped = 0;
        while (place < end && Hex.isDigit(bytes[place]) && dropped < Integer.MAX_VALUE) {
            dropped = 10 * dropped + (bytes[place] - '0');
            place++;
        }
        return place > at + DROP_NOTE.length;
    }

    /** Skips a word and the space behind it; false if there is none or nothing behind it. */
    private boolean skipWord() {
        int start = at;
        while (at < end && !isSpace(bytes[at])) {
            at++;
        }
        boolean word = at > start;
        skipSpace();
        return word && at < end;
    }

    private void skipSpace() {
        while (at < end && isSpace(bytes[at])) {
            at++;
        }
    }

    private static boolean isSpace(byte b) {
        return b == ' ' || b == '\t';
    }
}
