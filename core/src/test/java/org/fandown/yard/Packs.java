package org.fandown.yard;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.rulebook.Rulebook;

/** Rule packs of places that do not exist, written as a pack file is. */
public final class Packs {
    /** What every pack here says of an expected check. */
    public static final String GAP = "Looked for in the papers of the yard and not found.";

    private Packs() {}

    /**
     * Returns the text of a rule. Title, source and provenance are filled in where the keys leave
     * them out.
     *
     * @param id the rule's id, with its place
     * @param check the text form of its check
     * @param keys further keys, each {@code 'key': value}, with commas between
     */
    public static String rule(String id, String check, String keys) {
        StringBuilder text = new StringBuilder("{'id': '").append(id).append("', 'check': '");
        text.append(check).append("'");
        unlessGiven(text, keys, "title", "Rule " + id);
        unlessGiven(text, keys, "provenance", "published");
        if (!keys.contains("'values'")) {
            unlessGiven(text, keys, "source", "S");
        }
        return text.append(", ").append(keys).append("}").toString();
    }

    private static void unlessGiven(StringBuilder text, String keys, String key, String value) {
        if (!keys.contains("'" + key + "':")) {
            text.append(", '").append(key).append("': '").append(value).append("'");
        }
    }

    /** Returns a pack without parent; it has a gap entry for every expected check. */
    public static Pack pack(String place, String... rules) {
        return read(place, "", rules);
    }

    /** Returns a pack with a parent. */
    public static Pack child(String place, String parent, String... rules) {
        return read(place, "'parent': '" + parent + "', ", rules);
    }

    /** Returns a rulebook of the packs. */
    public static Rulebook book(Pack... packs) {
        return Rulebook.of(List.of(packs));
    }

    /** Returns a rulebook of one pack, of the place XA, with the given rules. */
    public static Rulebook of(String... rules) {
        return book(pack("XA", rules));
    }

    private static Pack read(String place, String parent, String... rules) {
        List<String> gaps = new ArrayList<>();
        for (Check check : Check.values()) {
            if (check.expectedEverywhere()) {
                gaps.add("{'check': '" + check.id() + "', 'says': '" + GAP + "'}");
            }
        }
        String json =
                "{'place': '"
                        + place
                        + "', 'name': 'Yardland "
                        + place
                        + "', "
                        + parent
                        + "'checked-on': '2026-11-25', 'sources': {'S': {'work': 'Yard handbook',"
                        + " 'edition': '2020', 'section': '1'}, 'T': {'work': 'Yard circular',"
                        + " 'edition': '2024', 'section': '9'}}, 'gaps': ["
                        + String.join(", ", gaps)
                        + "], 'rules': ["
                        + String.join(",\n", rules)
                        + "]}";
        return PackReader.read(Quoted.read(place + ".json", json));
    }
}
