package org.fandown.app.architecture.bad.files;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.fandown.app.cli.ExitCode;
import picocli.CommandLine;

/** Reads files, and should know neither the command line nor paper. */
public abstract class Reader {
    abstract CommandLine commandLine();

    abstract PDDocument[] pages();

    Class<?> higher() {
        return ExitCode.class;
    }
}
