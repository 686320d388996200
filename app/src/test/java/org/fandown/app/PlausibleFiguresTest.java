package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.DocumentText;
import org.fandown.document.DocumentException;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ranges that docs/formats.md names: the figure at each end is read, one beyond is refused. */
class PlausibleFiguresTest {
    private static final Path VEHICLES = Path.of("..", "examples", "vehicles");

    @ParameterizedTest(name = "{0}: {1} is read, {2} is refused")
    @CsvSource(
            delimiter = '|',
            value = {
                "readings: { governor-cut-out: # }           | 250 psi     | 250.1 psi",
                "readings: { governor-cut-out: # }           | 0 psi       | -0.1 psi",
                "readings: { governor-cut-out: # }           | 1723 kPa    | 1724 kPa",
                "readings: { governor-cut-out: # }           | 17.2 bar    | 17.3 bar",
                "readings: { governor-cut-out: [90 psi, #] } | 250 psi     | 251 psi",
                "readings: { reservoir-proof-pressure: # }   | 1500 psi    | 1501 psi",
                "readings: { build-up-from-empty: # }        | 60 min      | 61 min",
                "readings: { release-time: # }               | 0 s         | -1 s",
                "readings: { stopping-distance: # }          | 1000 m      | 1001 m",
                "readings: { deceleration: # }               | 15 m/s2     | 15.1 m/s2",
                "readings: { braking-force: # }              | 1000 %      | 1001 %",
                "readings: { gauge-error: # }                | -100 %      | -101 %",
                "readings: { reserve-applications: # }       | 100 each    | 101 each",
                "readings: { air-loss-applied: { loss: 2 psi, time: # } } | 1 s | 0.9 s",
                "readings: { build-up: { from: 85 psi, to: 100 psi, time: # } } | 1 s | 0 s",
                "readings: { air-loss-applied: { points: [{ at: 5 s, gauge: 90 psi }, { at: #, gauge: 90 psi }] } } | 6 s | 5.5 s",
                "readings: { air-loss-applied: { loss: 2 psi, time: # } }            | 24 h | 25 h",
                "readings: { air-loss-applied: { loss: #, time: 1 min } }            | 250 psi | 251 psi",
                "readings: { build-up: { from: 85 psi, to: 100 psi, time: # } }      | 1 h  | 61 min",
                "readings: { build-up: { from: 85 psi, to: #, time: 60 s } }         | 250 psi | 251 psi",
                "readings: { governor-cut-in: { gauge: 100 psi, engine-speed: # } }  | 6000 rpm | 6001 rpm",
                "readings: { deceleration: { value: 5 m/s2, speed: # } }             | 250 km/h | 251 km/h",
                "readings: { no-audible-leak: { answer: yes, held-for: # } }         | 24 h | 25 h",
                "readings: { no-audible-leak: { answer: yes, applications: # } }     | 50   | 51",
                "readings: { reservoir-reserve: { before: #, after: 90 psi } }       | 250 psi | 251 psi",
                "instruments: { gauge: # }      | 15 psi  | 16 psi",
                "instruments: { clock: # }      | 1 min   | 61 s",
                "instruments: { rule: # }       | 1 in    | 1 1/16 in",
                "instruments: { tachometer: # } | 500 rpm | 501 rpm",
                "instruments: { protractor: # } | 45 deg  | 46 deg",
                "instruments: { tester: # }     | 10 %    | 11 %",
                "instruments: { tester: # }     | 0.1 %   | 0 %",
                "wheels: { 1L: { hand-play: # } }      | 6 in    | 6.1 in",
                "wheels: { 1L: { makers-limit: # } }   | 0.5 in  | 0.4 in",
                "wheels: { 1L: { makers-limit: # } }   | 6 in    | 6.1 in",
                "wheels: { 1L: { lining: # } }         | 2 in    | 2.1 in",
                "wheels: { 1L: { wedge-movement: # } } | 50.8 mm | 51 mm",
                "wheels: { 1L: { cam-angle: # } }      | 180 deg | 181 deg",
                "wheels: { 1L: { released: #, fully-applied-length: 20 in } } | 19 in | 21 in",
                // a standard clamp 20 travels 2 1/4 in from end to end
                "wheels: { 1L: # }                     | 2 3/4 in | 2 13/16 in",
                "wheels: { 1L: { applied: # } }        | 69.8 mm  | 70 mm",
                "wheels: { 1L: { released: 3 in, fully-applied-length: # } } | 5 3/4 in | 6 in",
                "wheels: { 1L: { applied: 1 in, free: # } } | 1 1/8 in | 1 3/16 in",
                "readings: { governor-cut-out: 120 psi, governor-cut-in: # } | 119 psi | 120 psi",
                "readings: { reservoir-reserve: { before: 90 psi, after: # } } | 90 psi | 91 psi",
            })
    void figure_at_the_end_of_its_range_is_read_and_one_beyond_is_refused(
            String entry, String within, String beyond) {
        assertThat(read(entry.replace("#", within))).isNotNull();
        assertThatThrownBy(() -> read(entry.replace("#", beyond)))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining(" Allowed: ")
                .hasMessageContaining(" Next: ");
    }

    @ParameterizedTest
    @CsvSource({
        "1950-01-01T00:00:00Z, 1949-12-31T23:59:59Z, old.yaml",
        "2099-12-31T23:59:59Z, 2100-01-01T00:00:00Z, straight-truck.yaml",
        // built in June 2021
        "2021-06-01T00:00:00Z, 2021-05-31T23:59:59Z, straight-truck.yaml"
    })
    void moment_at_the_end_of_its_range_is_read_and_one_beyond_is_refused(
            String within, String beyond, String vehicle) {
        assertThat(at(within, vehicle)).isNotNull();
        assertThatThrownBy(() -> at(beyond, vehicle))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining(": moment: ");
    }

    private static Inspection read(String entry) {
        return text("moment: 2026-11-24T06:00:00Z\nvehicle: straight-truck.yaml\n" + entry);
    }

    private static Inspection at(String moment, String vehicle) {
        return text("moment: " + moment + "\nvehicle: " + vehicle);
    }

    private static Inspection text(String text) {
        return new InspectionReader(PlausibleFiguresTest::vehicle)
                .read(DocumentText.yaml("inspection.yaml", "place: CA-ON\n" + text + "\n"));
    }

    private static org.fandown.document.Node vehicle(String name) {
        return name.equals("old.yaml")
                ? DocumentText.yaml(
                        name,
                        """
                        name: Truck of unknown age
                        use: property
                        units:
                          - kind: truck
                            id: "1"
                            axles:
                              - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                              - { position: drive, brake: drum, chamber: clamp 30, spring-brake: no }
                        """)
                : DocumentFiles.read(VEHICLES.resolve(name));
    }
}
