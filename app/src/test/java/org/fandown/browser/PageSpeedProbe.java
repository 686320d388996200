package org.fandown.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.Arrays;
import org.fandown.app.files.DocumentFiles;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How fast pages and records are, in a real Chromium from the real server. Prints figures for
 * bench/README.md and judges none, since they are those of a machine: {@code bench/pages} runs it.
 */
class PageSpeedProbe {
    private static final int TIMES = 7;
    private static final int RECORDS = 2000;
    private static final int AT_ONCE = 5;
    private static final String[] WORDS = {
        "", "words=ca-on", "words=fit+straight", "words=nowhere"
    };

    private static final String FRAMES =
            """
            () => new Promise((done) => {
              const began = performance.now();
              let frames = 0;
              const next = () => {
                frames += 1;
                const spent = performance.now() - began;
                if (spent < 15000) requestAnimationFrame(next);
                else done((1000 * frames) / spent);
              };
              requestAnimationFrame(next);
            })""";

    @TempDir private Path folder;

    @Test
    void loads() {
        double[] first = new double[TIMES];
        double[] later = new double[TIMES];
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch()) {
            for (int i = 0; i < TIMES; i++) {
                try (BrowserContext fresh = browser.newContext(Screens.PHONE.options())) {
                    Page page = fresh.newPage();
                    first[i] = until(page, () -> page.navigate(site.address() + "#/rules"));
                    page.evaluate("navigator.serviceWorker.ready.then(() => 1)");
                    later[i] = until(page, page::reload);
                }
            }
        }
        print("first load until the core has answered, ms", first);
        print("later load until the core has answered, ms", later);
    }

    private static double until(Page page, Runnable load) {
        return millis(
                () -> {
                    load.run();
                    page.waitForSelector(".rule");
                });
    }

    @Test
    void frames() {
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(Screens.PHONE.options())) {
            Page page = context.newPage();
            page.navigate(site.address() + "#/practice/cold-start");
            page.waitForSelector(".gauge");
            for (String control : new String[] {"Key", "Engine"}) {
                page.locator(".controls button", new Page.LocatorOptions().setHasText(control))
                        .click();
            }
            System.out.println(
                    "frames a second in the cab: "
                            + Math.round(((Number) page.evaluate(FRAMES)).doubleValue() * 10)
                                    / 10.0);
            page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName("What happened").setExact(true))
                    .click();
            System.out.println(page.getByText("The simulation takes").textContent());
        }
    }

    @Test
    void records() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            double[] writes = new double[RECORDS / AT_ONCE];
            for (int i = 0; i < writes.length; i++) {
                String sent = sent(i * AT_ONCE);
                writes[i] = millis(() -> site.post("api/records", sent));
            }
            print("five records sent, judged and kept, ms", writes);
            for (String words : WORDS) {
                double[] asked = new double[51];
                for (int i = 0; i < asked.length; i++) {
                    asked[i] = millis(() -> site.get("api/records?" + words));
                }
                print("list of " + RECORDS + " by '" + words + "', ms", asked);
            }
        }
    }

    private static String sent(int from) {
        Tree.ListBuilder list = Tree.list();
        for (int i = from; i < from + AT_ONCE; i++) {
            String id = "0b7e3a52-93d1-4c0e-9a65-" + String.format("%012x", i);
            list.add(
                    Tree.map()
                            .put("format", "fandown-record/1")
                            .put("id", id)
                            .put("kind", "inspection")
                            .put("made", "2026-11-30T06:40:00-05:00")
                            .put("inspection", inspection()));
        }
        return Json.writeCompact(Tree.map().put("records", list).build());
    }

    private static Node inspection() {
        Path examples = Path.of("..", "examples");
        MapNode read =
                (MapNode)
                        DocumentFiles.read(
                                examples.resolve("inspections/ontario-truck-in-order.yaml"));
        Tree.MapBuilder map = Tree.map();
        read.entries()
                .forEach(
                        (key, entry) -> {
                            if (!key.equals("vehicle")) {
                                map.put(key, entry.value());
                            }
                        });
        Path vehicle = examples.resolve("vehicles/straight-truck.yaml");
        return map.put("vehicle", DocumentFiles.read(vehicle)).build();
    }

    private interface Work {
        void run() throws Exception;
    }

    private static double millis(Work work) {
        long began = System.nanoTime();
        try {
            work.run();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
        return (System.nanoTime() - began) / 1e6;
    }

    private static void print(String what, double[] all) {
        Arrays.sort(all);
        System.out.println(
                what
                        + ": median "
                        + Math.round(all[all.length / 2] * 10) / 10.0
                        + ", least "
                        + Math.round(all[0] * 10) / 10.0
                        + ", most "
                        + Math.round(all[all.length - 1] * 10) / 10.0);
    }
}
