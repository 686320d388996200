package org.fandown.app.cli;

import org.fandown.app.files.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** Says the version of the program. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"fandown " + ProgramVersion.text()};
    }
}
