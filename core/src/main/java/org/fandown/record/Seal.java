package org.fandown.record;

import java.util.regex.Pattern;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/**
 * One link of the two chains that every kept record is in: that of the site and that of its
 * vehicle. It says which record arrived when, what the judge made of it then, and which links came
 * before. Whoever knows the hash of a link can tell whether anything before it was changed, left
 * out or put in.
 *
 * @param number its place in the order of arrival at the site, from 1
 * @param received when it arrived, UTC, such as {@code 2026-11-30T11:40:00.000Z}
 * @param record hash of the record's canonical JSON
 * @param judgement hash of the canonical JSON of the judgement at that time, empty if nothing was
 *     judged
 * @param sender the account that sent it, empty where there are none
 * @param vehicle the key of the vehicle's chain, see {@link VehicleKey}
 * @param siteBefore hash of the site's link before, empty for the first
 * @param vehicleBefore hash of the vehicle's link before, empty for its first
 */
public record Seal(
        long number,
        String received,
        String record,
        String judgement,
        String sender,
        String vehicle,
        String siteBefore,
        String vehicleBefore) {
    /** Name of the format. */
    public static final String FORMAT = "fandown-seal/1";

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final Pattern WHOLE = Pattern.compile("[1-9][0-9]{0,15}");

    /**
     * Checks the forms.
     *
     * @throws IllegalArgumentException if the number is below 1 or a hash is none
     */
    public Seal {
        boolean sound =
                number >= 1
                        && isHash(record)
                        && (judgement.isEmpty() || isHash(judgement))
                        && (siteBefore.isEmpty() || isHash(siteBefore))
                        && (vehicleBefore.isEmpty() || isHash(vehicleBefore));
        if (!sound) {
            throw new IllegalArgumentException(
                    "A seal needs a number from 1 on and hashes of 64 hexadecimal digits.");
        }
    }

    private static boolean isHash(String text) {
        return HASH.matcher(text).matches();
    }

    /** The link as a document; what is empty is left out. */
    public MapNode document() {
        Tree.MapBuilder map = Tree.map().put("format", FORMAT).put("number", number);
        put(map, "received", received);
        put(map, "record", record);
        put(map, "judgement", judgement);
        put(map, "sender", sender);
        put(map, "vehicle", vehicle);
        put(map, "site-before", siteBefore);
        put(map, "vehicle-before", vehicleBefore);
        return map.build();
    }

    private static void put(Tree.MapBuilder map, String key, String text) {
        if (!text.isEmpty()) {
            map.put(key, text);
        }
    }

    /** SHA-256 of the link's canonical JSON: 64 hexadecimal digits. */
    public String hash() {
        return Sha256.of(CanonicalJson.write(document()));
    }

    /**
     * Reads a link.
     *
     * @throws DocumentException if it is none
     */
    public static Seal read(Node node) {
        Fields fields = Fields.of(node);
        if (!fields.text("format").equals(FORMAT)) {
            throw fields.refuse(
                    "format", "this is no seal", FORMAT, "take the file as it was made");
        }
        try {
            Seal seal =
                    new Seal(
                            number(fields),
                            fields.text("received"),
                            fields.text("record"),
                            fields.optionalText("judgement").orElse(""),
                            fields.optionalText("sender").orElse(""),
                            fields.optionalText("vehicle").orElse(""),
                            fields.optionalText("site-before").orElse(""),
                            fields.optionalText("vehicle-before").orElse(""));
            fields.end();
            return seal;
        } catch (IllegalArgumentException e) {
            throw fields.refuseHere(
                    "this is no seal",
                    "a number from 1 on and hashes of 64 hexadecimal digits",
                    "take the file as it was made");
        }
    }

    private static long number(Fields fields) {
        String text = fields.text("number");
        if (!WHOLE.matcher(text).matches()) {
            throw new IllegalArgumentException("no number");
        }
        return Long.parseLong(text);
    }
}
