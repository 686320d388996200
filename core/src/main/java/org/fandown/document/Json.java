package org.fandown.document;

/**
 * Reads and writes JSON.
 *
 * <p><i>Source:</i> RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format,
 * December 2017. Where it leaves room this reader is strict: a key may stand only once in an
 * object, nesting goes 64 deep at most, and half a surrogate pair is refused. Numbers keep the text
 * in which they were written.
 */
public final class Json {
    private Json() {}

    /**
     * Reads a document.
     *
     * @param file the name of the file, for positions and messages
     * @param text the whole text
     * @return the document, each node with its position and path
     * @throws DocumentException if the text is not one JSON value under the rules above
     */
    public static Node read(String file, String text) {
        return new JsonReader(file, text).read();
    }

    /**
     * Writes a document over several lines, indented by two spaces, ending without a line break.
     *
     * @param node the document
     * @return its text
     */
    public static String write(Node node) {
        return new JsonWriter(true).write(node);
    }

    /**
     * Writes a document on one line, without any space outside its texts.
     *
     * @param node the document
     * @return its text; equal for documents of equal content, wherever they were read
     */
    public static String writeCompact(Node node) {
        return new JsonWriter(false).write(node);
    }
}
