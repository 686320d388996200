/**
 * The web server: the pages, what they need beside the core, and what devices send to be kept. Home
 * of Javalin. It listens on this machine alone.
 */
@NullMarked
package org.fandown.app.web;

import org.jspecify.annotations.NullMarked;
