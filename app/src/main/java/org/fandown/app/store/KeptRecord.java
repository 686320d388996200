package org.fandown.app.store;

import org.fandown.record.Seal;

/**
 * A record as it is kept.
 *
 * @param head what lists show
 * @param content the whole record, canonical JSON; the seal holds the hash of its UTF-8 bytes as
 *     {@code record}
 * @param statement what the site said of it when it arrived, canonical JSON: what it is found by
 *     and the judgement; the seal holds its hash as {@code judgement}
 * @param seal its link in the chains
 */
public record KeptRecord(RecordHead head, String content, String statement, Seal seal) {}
