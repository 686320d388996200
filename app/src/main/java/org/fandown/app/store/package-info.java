/**
 * What is kept: records that devices sent, in one file of an embedded database. Rows are only ever
 * added. Home of JDBI, Flyway and SQLite.
 */
@NullMarked
package org.fandown.app.store;

import org.jspecify.annotations.NullMarked;
