/**
 * What is kept: records that devices sent, in one file of an embedded database or on a PostgreSQL
 * server. Rows are only ever added. Home of JDBI, Flyway, HikariCP and both databases.
 */
@NullMarked
package org.fandown.app.store;

import org.jspecify.annotations.NullMarked;
