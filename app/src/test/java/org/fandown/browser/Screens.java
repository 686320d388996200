package org.fandown.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.options.ColorScheme;

/** The sizes at which every page has to work. */
enum Screens {
    /** A phone held upright, in daylight. */
    PHONE(390, 844, true, ColorScheme.LIGHT),
    /** A screen on a desk, at night. */
    DESK(1280, 900, false, ColorScheme.DARK);

    private final int width;
    private final int height;
    private final boolean touch;
    private final ColorScheme scheme;

    Screens(int width, int height, boolean touch, ColorScheme scheme) {
        this.width = width;
        this.height = height;
        this.touch = touch;
        this.scheme = scheme;
    }

    /** A fresh context of this size. */
    Browser.NewContextOptions options() {
        return new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setHasTouch(touch)
                .setColorScheme(scheme);
    }

    /** The same for a browser that keeps its profile. */
    BrowserType.LaunchPersistentContextOptions profile() {
        return new BrowserType.LaunchPersistentContextOptions()
                .setViewportSize(width, height)
                .setHasTouch(touch)
                .setColorScheme(scheme);
    }
}
