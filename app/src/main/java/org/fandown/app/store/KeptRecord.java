package org.fandown.app.store;

/**
 * A record as it is kept.
 *
 * @param number its place in the order of arrival, from 1
 * @param head what lists show
 * @param content the whole record, JSON
 * @param hash SHA-256 of the content's UTF-8 bytes, 64 hexadecimal digits
 */
public record KeptRecord(long number, RecordHead head, String content, String hash) {}
