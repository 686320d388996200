/**
 * The command line: verbs, options and exit codes.
 *
 * <p>{@link org.fandown.app.cli.FandownCommand} is the command without a verb; each verb is a class
 * of its own that is listed there. {@link org.fandown.app.cli.ExitCode} names what a command can
 * end with. This is the only package that knows the command-line library.
 */
@NullMarked
package org.fandown.app.cli;

import org.jspecify.annotations.NullMarked;
