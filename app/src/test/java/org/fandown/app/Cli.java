package org.fandown.app;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.fandown.app.cli.FandownCommand;

/**
 * What one command wrote and ended with.
 *
 * @param exit the exit code
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Cli(int exit, String out, String err) {
    static Cli run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = FandownCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Cli(exit, out.toString(), err.toString());
    }
}
