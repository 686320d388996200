package org.fandown.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
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
        return packs.rulebookFor(place)
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        "There is no rule pack for "
                                                + place
                                                + ". Allowed: "
                                                + known(packs)
                                                + ". Next: "
                                                + nextStep(packs, place)
                                                + "."));
    }

    /** The places that have a pack, in words. */
    static String known(RulePacks packs) {
        return String.join(", ", packs.places().stream().map(PlaceCode::code).toList());
    }

    /** What to do about a place without a pack: its country may have one. */
    static String nextStep(RulePacks packs, PlaceCode place) {
        PlaceCode country = new PlaceCode(place.code().substring(0, 2));
        String own = "add a pack for it with --packs, see docs/rules.md";
        return packs.places().contains(country)
                ? "write " + country + " to judge by the rules of the country alone, or " + own
                : own;
    }

    static PlaceCode place(String code, CommandLine command) {
        if (!PlaceCode.isWellFormed(code)) {
            throw new ParameterException(
                    command,
                    "'" + code + "' is not a place code. Write an ISO 3166 code such as CA-ON.");
        }
        return new PlaceCode(code);
    }

    /** The day that was written, today if none was, or a refusal that shows how to write it. */
    static LocalDate day(@Nullable String text, CommandLine command) {
        if (text == null) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    command, "'" + text + "' is not a date. Write it as 2026-11-25.", e);
        }
    }
}
