/** What people with accounts, and those without, can count on: from the outside over HTTP. */
@NullMarked
package org.fandown.contract.people;

import org.jspecify.annotations.NullMarked;
