package org.fandown.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.Rulebook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options about rule packs that several verbs share. */
final class PackOptions {
    @Option(
            names = "--packs",
            paramLabel = "DIR",
            description =
                    "a folder with rule packs of your own, beside those that come with the program")
    private @Nullable Path folder;

    RulePacks packs() {
        return folder == null ? RulePacks.builtIn() : RulePacks.builtIn().and(folder);
    }

    /** The rulebook of a place, or a refusal that names the known places. */
    Rulebook rulebook(RulePacks packs, PlaceCode place, CommandLine command) {
        Optional<Rulebook> book = packs.rulebookFor(place);
        return book.orElseThrow(
                () ->
                        new ParameterException(
                                command,
                                "There is no rule pack for "
                                        + place
                                        + ". Known places: "
                                        + packs.places()
                                        + "."));
    }

    static PlaceCode place(String code, CommandLine command) {
        if (!PlaceCode.isWellFormed(code)) {
            throw new ParameterException(
                    command,
                    "'" + code + "' is not a place code. Write an ISO 3166 code such as CA-ON.");
        }
        return new PlaceCode(code);
    }
}
