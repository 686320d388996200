package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Somebody who works a page by its keyboard alone, and sees where they are by its focus alone. */
final class Keyboard {
    /** More presses than any page has things to press. */
    private static final int MOST_TABS = 250;

    /** A browser scrolls to what has the focus a few frames later, ms. */
    private static final double A_FRAME = 20;

    private static final int PATIENCE = 25;

    /** What has the focus: its name, and whether it can be seen that it has. */
    private static final String FOCUSED =
            """
            (() => {
              const e = document.activeElement;
              if (!e || e === document.body) return ['', true];
              // Where a change of page puts the focus is no place one goes to by a key.
              if (e.tabIndex < 0) return ['', true];
              const label = e.labels && e.labels.length ? e.labels[0].textContent : '';
              const name = (e.getAttribute('aria-label') || label || e.textContent || '')
                .replace(/\\s+/g, ' ').trim();
              const outline = getComputedStyle(e);
              const rect = e.querySelector('rect');
              const inked = (s) => s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2;
              const drawn = rect !== null && parseFloat(getComputedStyle(rect).strokeWidth) >= 5;
              const box = e.getBoundingClientRect();
              const there = box.width > 0 && box.bottom > 0 && box.top < innerHeight
                && box.right > 0 && box.left < innerWidth;
              return [name, (inked(outline) || (e.tagName === 'g' && drawn)) && there];
            })()""";

    private final Page page;

    Keyboard(Page page) {
        this.page = page;
    }

    /** Moves on, by the Tab key, to something whose name begins so; everything on the way shows. */
    Keyboard to(String name) {
        Pattern wanted = Pattern.compile("^" + Pattern.quote(name) + "(\\W|\\d|$)");
        List<String> met = new ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            String now = focused();
            if (wanted.matcher(now).find()) {
                return this;
            }
            met.add(now);
        }
        throw new AssertionError("'" + name + "' cannot be reached; the Tab key meets " + met);
    }

    /** Goes to something and presses it. */
    Keyboard press(String name) {
        return to(name).key("Enter");
    }

    /** Goes to something and presses it by the space bar. */
    Keyboard space(String name) {
        return to(name).key("Space");
    }

    /** Presses a key where the focus is. */
    Keyboard key(String key) {
        page.keyboard().press(key);
        return this;
    }

    /** Types over what a field holds. */
    Keyboard type(String name, String text) {
        to(name).key("Control+A");
        page.keyboard().type(text);
        return key("Tab");
    }

    /** Names what has the focus now. */
    String focused() {
        List<?> found = (List<?>) page.evaluate(FOCUSED);
        for (int i = 0; i < PATIENCE && found.get(1).equals(false); i++) {
            page.waitForTimeout(A_FRAME);
            found = (List<?>) page.evaluate(FOCUSED);
        }
        String name = (String) found.get(0);
        assertThat(found.get(1)).as("the focus is seen at '" + name + "'").isEqualTo(true);
        return name;
    }

    /** Goes all the way round: comes past everything and to the first thing of the page again. */
    List<String> round() {
        to("Skip to the work");
        List<String> met = new ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            String now = focused();
            if (now.startsWith("Skip to the work")) {
                return met;
            }
            met.add(now);
        }
        throw new AssertionError("The focus does not come round; it met " + met);
    }
}
