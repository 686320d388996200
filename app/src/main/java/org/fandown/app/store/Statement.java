package org.fandown.app.store;

import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.record.CanonicalJson;
import org.jspecify.annotations.Nullable;

/**
 * What the site says of a record when it arrives: what it is found by, and what the judge made of
 * it. The seal holds its hash, so that neither can be changed afterwards.
 */
final class Statement {
    /** Name of the format. */
    static final String FORMAT = "fandown-statement/1";

    private Statement() {}

    /** The statement, canonical JSON. */
    static String of(RecordHead head, @Nullable Node judgement) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("format", FORMAT)
                        .put("id", head.id())
                        .put("kind", head.kind())
                        .put("made", head.made())
                        .put("place", head.place())
                        .put("vehicle", head.vehicle())
                        .put("verdict", head.verdict())
                        .put("words", head.words());
        if (judgement != null) {
            map.put("judgement", judgement);
        }
        return CanonicalJson.write(map.build());
    }
}
