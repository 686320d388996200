package org.fandown.app.paper;

import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * An element of the page under construction. The page is built as a tree, never as text, so that
 * nothing a person wrote can be taken for markup.
 */
final class Tag {
    /** Elements that hold text only. */
    private static final Set<String> BARE = Set.of("title", "style", "span");

    private final Element element;

    private Tag(Element element) {
        this.element = element;
    }

    /** Starts a document with its outermost element. */
    static Tag root(String name) {
        try {
            Document document =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
            Element element = document.createElement(name);
            document.appendChild(element);
            return new Tag(element);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("The XML library of this Java is not usable.", e);
        }
    }

    /** Adds a child and returns it. */
    Tag add(String name) {
        Element child = document().createElement(name);
        element.appendChild(child);
        return new Tag(child);
    }

    /** Adds a child of a CSS class and returns it. */
    Tag add(String name, String cssClass) {
        return add(name).set("class", cssClass);
    }

    /**
     * Adds text, cleaned of what cannot be printed, and returns this element. The text has an
     * element of its own, because text beside elements is drawn before them, out of order.
     */
    Tag text(String text) {
        Element place = element;
        if (!BARE.contains(element.getTagName())) {
            place = document().createElement("span");
            element.appendChild(place);
        }
        place.appendChild(document().createTextNode(Writing.asSeen(Clean.text(text))));
        return this;
    }

    /** Sets an attribute and returns this element. */
    Tag set(String attribute, String value) {
        element.setAttribute(attribute, value);
        return this;
    }

    /** Adds columns of the given widths (percent) to a table. */
    Tag columns(List<Integer> widths) {
        Tag group = add("colgroup");
        for (int width : widths) {
            group.add("col").set("style", "width: " + width + "%");
        }
        return this;
    }

    /** The whole document. */
    Document document() {
        return element.getOwnerDocument();
    }
}
