package org.fandown.yard;

import org.fandown.document.Json;
import org.fandown.document.Node;

/** JSON written with apostrophes for quotation marks, which reads better inside Java. */
final class Quoted {
    private Quoted() {}

    static Node read(String file, String json) {
        return Json.read(file, json.replace('\'', '"'));
    }
}
