package org.fandown.app.files;

import java.security.MessageDigest;
import org.fandown.trace.LogReader;

/** Passes the bytes of a log on to another reader, and takes their SHA-256. */
public final class DigestReader implements LogReader {
    private final LogReader reader;
    private final MessageDigest digest;

    /** Makes one before another reader. */
    public DigestReader(LogReader reader) {
        this.reader = reader;
        digest = Sha256.begin();
    }

    @Override
    public void accept(byte[] buffer, int from, int to) {
        digest.update(buffer, from, to - from);
        reader.accept(buffer, from, to);
    }

    @Override
    public void finish() {
        reader.finish();
    }

    @Override
    public long lines() {
        return reader.lines();
    }

    /** Returns the SHA-256 of all bytes since the last call, in hexadecimal digits. */
    public String sha256() {
        return Sha256.end(digest);
    }
}
