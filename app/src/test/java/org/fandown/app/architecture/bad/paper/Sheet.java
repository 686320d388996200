package org.fandown.app.architecture.bad.paper;

import org.apache.pdfbox.pdmodel.PDDocument;

/** Uses a library in its home, which no rule forbids. */
public abstract class Sheet {
    abstract PDDocument page();
}
