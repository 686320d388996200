package org.fandown.app.store;

/**
 * What a record tells of its vehicle, without photos and all that is large.
 *
 * @param number its place in the order of arrival
 * @param id its id
 * @param kind what it is
 * @param made when its maker says that it was made
 * @param statement what the site said of it, canonical JSON
 */
public record Telling(long number, String id, String kind, String made, String statement) {}
