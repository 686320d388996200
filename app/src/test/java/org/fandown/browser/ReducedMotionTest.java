package org.fandown.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who asked their device for less motion gets none that does not tell anything. */
class ReducedMotionTest {
    private static final List<String> PAGES =
            List.of("", "#/practice", "#/practice/roll-away", "#/yard", "#/rules", "#/records");

    /** How many movements run that styles made, and how many would if something waited. */
    private static final String MOVES =
            """
            (() => {
              const waits = document.body.appendChild(document.createElement('p'));
              waits.className = 'wait';
              const runs = document.getAnimations().length;
              const moving = [...document.querySelectorAll('*')].filter((e) => {
                const s = getComputedStyle(e);
                return s.animationName !== 'none' || s.transitionDuration.split(',').some((t) => parseFloat(t) > 0)
                  || s.scrollBehavior === 'smooth';
              }).length;
              waits.remove();
              return runs + moving;
            })()""";

    @TempDir private Path folder;

    @Test
    void nothing_moves_by_itself_and_needles_still_tell() {
        assertThat(moves(ReducedMotion.REDUCE)).containsOnly(0);
    }

    /** The same look at the pages finds the one movement there is where nobody minds it. */
    @Test
    void somebody_who_does_not_mind_sees_it_move() {
        assertThat(moves(ReducedMotion.NO_PREFERENCE)).doesNotContain(0);
    }

    private List<Integer> moves(ReducedMotion wish) {
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context =
                        browser.newContext(Screens.DESK.options().setReducedMotion(wish))) {
            Page page = context.newPage();
            return PAGES.stream()
                    .map(
                            path -> {
                                page.navigate(site.address() + path);
                                page.waitForSelector("h1");
                                int moves = ((Number) page.evaluate(MOVES)).intValue();
                                if (path.contains("roll-away")) {
                                    needlesTell(page);
                                }
                                return moves;
                            })
                    .toList();
        }
    }

    private static void needlesTell(Page page) {
        assertThat(page.locator(".gauge g").first())
                .hasAttribute(
                        "transform",
                        java.util.regex.Pattern.compile("rotate\\(-4\\d.* 160 150\\)"));
        assertThat(page.locator(".needles .number").first()).hasText("105");
    }
}
