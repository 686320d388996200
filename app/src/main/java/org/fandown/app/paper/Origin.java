package org.fandown.app.paper;

import java.util.Optional;

/**
 * Where a report comes from, as far as it can be proven.
 *
 * @param record the canonical JSON it was made from, attached as {@code record.json}
 * @param seal the canonical JSON of the record's link in the chains of the site, attached as {@code
 *     seal.json}
 * @param signer by whose key the document is signed
 */
record Origin(Optional<String> record, Optional<String> seal, Optional<Signer> signer) {
    static final Origin UNKNOWN = new Origin(Optional.empty(), Optional.empty(), Optional.empty());
}
