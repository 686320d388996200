package org.fandown.app;

import org.fandown.app.cli.FandownCommand;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and leaves with its exit code.
     *
     * @param args the verb, its options and its files
     */
    public static void main(String[] args) {
        System.exit(FandownCommand.run(args));
    }
}
