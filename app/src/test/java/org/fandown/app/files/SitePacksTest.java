package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fandown.check.PlaceCode;
import org.fandown.check.Verdict;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.SetAside;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site's own pack on top of the rules of its province. */
class SitePacksTest {
    private static final Path YARD = Path.of("src/test/resources/site-packs/yard");
    private static final PlaceCode SITE = new PlaceCode("CA-ON-YARD");

    @TempDir private Path folder;

    @Test
    void pack_of_a_site_stands_before_those_of_its_province_and_country() {
        RulePacks packs = RulePacks.builtIn().and(YARD);

        assertThat(packs.places()).contains(SITE).containsAll(RulePacks.builtIn().places());
        assertThat(packs.rulebookFor(SITE).orElseThrow().lineage(SITE))
                .extracting(Pack::place)
                .extracting(PlaceCode::code)
                .containsExactly("CA-ON-YARD", "CA-ON", "CA");
    }

    @Test
    void stricter_rule_is_added_to_the_parents_and_bites() {
        Judgement judged = judge("air-loss-applied: { loss: 15 kPa, time: 1 min }");

        assertThat(status(judged, "ca-on-yard.air-loss-applied")).contains(Status.NOT_MET);
        assertThat(status(judged, "ca-on.air-loss-applied.class-d")).contains(Status.MET);
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Test
    void laxer_rule_lets_nothing_pass_that_the_parent_does_not() {
        Judgement judged = judge("low-air-warning: 360 kPa");

        assertThat(status(judged, "ca-on-yard.low-air-warning")).contains(Status.MET);
        assertThat(status(judged, "ca-on.low-air-warning")).contains(Status.NOT_MET);
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Test
    void rule_that_overrides_stands_in_the_parents_stead_and_says_why() {
        Judgement judged = judge("governor-cut-out: 132 psi");

        assertThat(status(judged, "ca-on-yard.governor-cut-out")).contains(Status.NOT_MET);
        assertThat(status(judged, "ca-on.governor-cut-out")).isEmpty();
        assertThat(judged.rules().setAside())
                .filteredOn(s -> s.ruling().rule().id().equals("ca-on.governor-cut-out"))
                .singleElement()
                .satisfies(
                        aside -> {
                            assertThat(aside.reason()).isEqualTo(SetAside.Reason.OVERRIDDEN);
                            assertThat(aside.by()).isEqualTo("ca-on-yard.governor-cut-out");
                        });
        assertThat(
                        judged.rules()
                                .byId("ca-on-yard.governor-cut-out")
                                .orElseThrow()
                                .rule()
                                .kinship())
                .satisfies(kin -> assertThat(kin.why()).contains("set lower"));
    }

    @Test
    void province_itself_is_judged_as_before() {
        Judgement judged =
                Judge.judge(
                        RulePacks.builtIn()
                                .and(YARD)
                                .rulebookFor(new PlaceCode("CA-ON"))
                                .orElseThrow(),
                        inspection("CA-ON", "air-loss-applied: { loss: 15 kPa, time: 1 min }"));

        assertThat(judged.findings())
                .noneMatch(f -> f.ruling().rule().id().startsWith("ca-on-yard."));
        assertThat(status(judged, "ca-on.air-loss-applied.class-d")).contains(Status.MET);
    }

    @Test
    void gap_of_a_site_is_said_beside_the_parents_rule() {
        assertThat(judge("governor-cut-out: 120 psi").rules().gaps())
                .filteredOn(gap -> gap.check().id().equals("build-up"))
                .singleElement()
                .satisfies(
                        gap -> {
                            assertThat(gap.from()).contains(new PlaceCode("CA-ON"));
                            assertThat(gap.says()).startsWith("Nothing of our own");
                        });
    }

    @Test
    void pack_may_be_json_and_other_files_of_the_folder_are_left_alone() throws IOException {
        String yard = Files.readString(YARD.resolve("CA-ON-YARD.yaml"));
        Files.writeString(folder.resolve("yard.json"), Json.write(DocumentText.yaml("y", yard)));
        Files.writeString(folder.resolve("readme.txt"), "no pack");
        Files.createDirectory(folder.resolve("old.yaml"));

        assertThat(RulePacks.builtIn().and(folder).places()).contains(SITE);
    }

    @Test
    void second_file_of_one_place_is_refused() throws IOException {
        Files.copy(YARD.resolve("CA-ON-YARD.yaml"), folder.resolve("a.yaml"));
        Files.copy(YARD.resolve("CA-ON-YARD.yaml"), folder.resolve("b.yaml"));

        DocumentException refused = refusal(folder);

        assertThat(refused.file()).isEqualTo(folder.resolve("b.yaml").toString());
        assertThat(refused.line()).isEqualTo(1);
        assertThat(refused.path()).isEqualTo("place");
        assertThat(refused.value()).isEqualTo("CA-ON-YARD");
        assertThat(refused.getMessage()).contains("another file in this folder", "into one file");
    }

    @Test
    void folder_that_is_not_there_is_refused() {
        DocumentException refused = refusal(folder.resolve("nowhere"));

        assertThat(refused.file()).isEqualTo(folder.resolve("nowhere").toString());
        assertThat(refused.getMessage()).contains("not a folder", "--packs");
    }

    @Test
    void folder_without_packs_adds_nothing() {
        assertThat(RulePacks.builtIn().and(folder).places())
                .isEqualTo(RulePacks.builtIn().places());
    }

    private static DocumentException refusal(Path folder) {
        return catchThrowableOfType(DocumentException.class, () -> RulePacks.builtIn().and(folder));
    }

    private static Judgement judge(String reading) {
        return Judge.judge(
                RulePacks.builtIn().and(YARD).rulebookFor(SITE).orElseThrow(),
                inspection(SITE.code(), reading));
    }

    private static Inspection inspection(String place, String reading) {
        return new InspectionReader(VehicleSource.NONE)
                .read(
                        DocumentText.yaml(
                                "inspection.yaml",
                                """
                                place: %s
                                moment: 2026-11-25T07:30:00-05:00
                                instruments: exact
                                conditions: as-printed
                                vehicle:
                                  name: Yard truck
                                  use: property
                                  units:
                                    - kind: truck
                                      id: T1
                                      axles:
                                        - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                                        - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
                                readings:
                                  %s
                                """
                                        .formatted(place, reading)));
    }

    private static Optional<Status> status(Judgement judged, String rule) {
        return judged.findings().stream()
                .filter(f -> f.ruling().rule().id().equals(rule))
                .map(f -> f.status())
                .findFirst();
    }
}
