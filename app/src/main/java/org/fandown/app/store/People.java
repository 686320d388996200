package org.fandown.app.store;

/**
 * What a store knows of the people of a site.
 *
 * @param accounts who they are
 * @param sessions who is logged in
 * @param audit what they did
 */
public record People(AccountStore accounts, SessionStore sessions, AuditTrail audit) {}
