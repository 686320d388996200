package org.fandown.app.store;

import java.nio.charset.StandardCharsets;
import org.fandown.app.files.Sha256;
import org.fandown.record.CanonicalJson;
import org.fandown.record.Seal;

/**
 * A record ready to be written: all that can be worked out before its place in the chains is known.
 */
record Unsealed(
        RecordHead head,
        String content,
        String contentHash,
        String statement,
        String statementHash,
        String chain,
        String sender) {
    static Unsealed of(Arrival arrival) {
        String content = CanonicalJson.write(arrival.content());
        String statement = Statement.of(arrival.head(), arrival.judgement());
        return new Unsealed(
                arrival.head(),
                content,
                hash(content),
                statement,
                hash(statement),
                arrival.chain(),
                arrival.sender());
    }

    /** The hash of a text, as seals hold it. */
    static String hash(String text) {
        return Sha256.of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The seal at a place in the chains. */
    Seal sealed(long number, String siteBefore, String chainBefore) {
        return new Seal(
                number,
                head.received(),
                contentHash,
                statementHash,
                sender,
                chain,
                siteBefore,
                chainBefore);
    }
}
