package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed for a check is what the judge reads, in the unit that stands beside it. */
class FigureEntryTest {
    /**
     * Types 5 into the form of every check that is one figure, and has each judged: its label, its
     * reading, and what the judge measured or complained of.
     */
    private static final String TYPE_ALL =
            """
            async (place) => {
              const { entry } = await import('/js/yard/entry.js');
              const { render } = await import('/lib/lit-html/lit-html.js');
              const { ask, askJson } = await import('/js/engine.js');
              const { places, vehicles } = await import('/js/data.js');
              await places();
              const [{ vehicle }] = await vehicles();
              const told = [];
              for (const check of (await askJson('checks')).filter((c) => c.kind === 'value')) {
                const data = { place, entries: {}, readings: {} };
                const draft = { data, now: () => 0, change: async (how) => how(data) };
                const where = document.createElement('div');
                render(entry(check, draft, () => {}), where);
                const field = where.querySelector('input');
                field.value = '5';
                field.dispatchEvent(new Event('change'));
                const label = field.getAttribute('aria-label');
                const moment = '2026-11-30T06:40-05:00';
                const inspection = { place, moment, vehicle, readings: data.readings };
                let judged = 'judged';
                try { await ask('judge', JSON.stringify(inspection)); } catch (e) { judged = e.message; }
                told.push({ check: check.id, dimension: check.dimension, label,
                  reading: JSON.stringify(data.readings[check.id] ?? null), judged });
              }
              return told;
            }""";

    private static final Map<String, String> IN_ONTARIO =
            Map.of(
                    "gauge-pressure", "psi",
                    "time", "s",
                    "ratio", "%",
                    "length", "m",
                    "acceleration", "m/s2",
                    "count", "each");

    private static final Map<String, String> IN_THE_STATES =
            Map.of(
                    "gauge-pressure", "psi",
                    "time", "s",
                    "ratio", "%",
                    "length", "ft",
                    "acceleration", "ft/s2",
                    "count", "each");

    @TempDir private Path folder;

    @Test
    void every_figure_is_read_in_the_unit_that_stands_beside_it() {
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(Screens.PHONE.options())) {
            Page page = context.newPage();
            page.navigate(site.address());
            assertFigures(page, "CA-ON", IN_ONTARIO);
            assertFigures(page, "US", IN_THE_STATES);
        }
    }

    @SuppressWarnings("unchecked")
    private static void assertFigures(Page page, String place, Map<String, String> units) {
        List<Map<String, String>> all = (List<Map<String, String>>) page.evaluate(TYPE_ALL, place);
        assertThat(all).extracting(each -> each.get("dimension")).containsAll(units.keySet());
        for (Map<String, String> each : all) {
            String unit = units.get(each.get("dimension"));
            assertThat(each.get("label")).as(each.toString()).endsWith(", " + unit);
            assertThat(each.get("reading")).as(each.toString()).contains("\"5 " + unit + "\"");
            assertThat(each.get("judged")).as(each.toString()).isEqualTo("judged");
        }
    }
}
