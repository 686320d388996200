package org.fandown.app.architecture.bad.cli;

import org.snakeyaml.engine.v2.api.Load;
import picocli.CommandLine;

/** Knows the command line, and should not know how files are written. */
public abstract class Verb {
    abstract CommandLine commandLine();

    abstract Load loader();
}
