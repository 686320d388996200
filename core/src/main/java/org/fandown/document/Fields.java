package org.fandown.document;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/**
 * A strict look at the keys of one map. A loader asks for each key that it knows, by type, and then
 * calls {@link #end}, which refuses every key that was not asked for. Each method raises a {@link
 * DocumentException} that names the place; methods named {@code optional...} return empty if the
 * key is absent, but refuse a key that is there without a value.
 *
 * <p>Not to be shared: it remembers which keys were asked for.
 */
public final class Fields {
    private final MapNode map;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(MapNode map) {
        this.map = map;
    }

    /**
     * Begins to look at a map.
     *
     * @param node the node
     * @return its fields, none asked for yet
     * @throws DocumentException if the node is no map
     */
    public static Fields of(Node node) {
        if (node instanceof MapNode map) {
            return new Fields(map);
        }
        throw Values.wrongShape(node, "a map of keys and values");
    }

    /** Returns the map looked at. */
    public MapNode map() {
        return map;
    }

    /** Returns the path of the map. */
    public String path() {
        return map.path();
    }

    /** Says whether a key is there; asking makes it a known key. */
    public boolean has(String key) {
        asked.add(key);
        return map.get(key).isPresent();
    }

    /**
     * Refuses the map if any of several keys is absent, naming all that are.
     *
     * @param keys the keys that must be there
     * @throws DocumentException if one is absent
     */
    public void require(String... keys) {
        List<String> missing = new ArrayList<>();
        for (String key : keys) {
            if (!has(key)) {
                missing.add("'" + key + "'");
            }
        }
        if (!missing.isEmpty()) {
            String names = String.join(", ", missing);
            throw Values.refuse(
                    map,
                    missing.size() == 1 ? "a key is missing" : "keys are missing",
                    "a map with the keys " + String.join(", ", keys),
                    "add " + names);
        }
    }

    /** Returns the node of a key that must be there. */
    public Node node(String key) {
        return need(key, "a value");
    }

    /** Returns the node of a key, if it is there. */
    public Optional<Node> optionalNode(String key) {
        asked.add(key);
        return map.get(key);
    }

    /** Reads a text; see {@link Values#text}. */
    public String text(String key) {
        return Values.text(need(key, "a text"));
    }

    /** Reads a text, if the key is there. */
    public Optional<String> optionalText(String key) {
        return optional(key, Values::text);
    }

    /** Reads one of several names; see {@link Values#choice(Node, Map)}. */
    public <T> T choice(String key, Map<String, T> choices) {
        return Values.choice(need(key, () -> Expected.oneOf(choices)), choices);
    }

    /** Reads one of several names, if the key is there. */
    public <T> Optional<T> optionalChoice(String key, Map<String, T> choices) {
        return optional(key, node -> Values.choice(node, choices));
    }

    /** Reads the name of a constant; see {@link Values#choice(Node, Enum[])}. */
    public <E extends Enum<E>> E choice(String key, E[] constants) {
        return Values.choice(need(key, () -> Expected.oneOf(Names.byKebab(constants))), constants);
    }

    /** Reads the name of a constant, if the key is there. */
    public <E extends Enum<E>> Optional<E> optionalChoice(String key, E[] constants) {
        return optional(key, node -> Values.choice(node, constants));
    }

    /** Reads a quantity of one dimension; see {@link Values#quantity(Node, Dimension)}. */
    public Quantity quantity(String key, Dimension dimension) {
        return quantity(key, Set.of(dimension));
    }

    /** Reads a quantity of one of several dimensions. */
    public Quantity quantity(String key, Set<Dimension> dimensions) {
        return Values.quantity(need(key, () -> Expected.quantity(dimensions)), dimensions);
    }

    /** Reads a quantity of one dimension, if the key is there. */
    public Optional<Quantity> optionalQuantity(String key, Dimension dimension) {
        return optional(key, node -> Values.quantity(node, dimension));
    }

    /** Reads a whole number; see {@link Values#integer}. */
    public int integer(String key, int min, int max) {
        return Values.integer(need(key, () -> Expected.integer(min, max)), min, max);
    }

    /** Reads a whole number, if the key is there. */
    public Optional<Integer> optionalInteger(String key, int min, int max) {
        return optional(key, node -> Values.integer(node, min, max));
    }

    /** Reads a number without a unit; see {@link Values#number}. */
    public double number(String key, double min, double max) {
        return Values.number(need(key, () -> Expected.number(min, max)), min, max);
    }

    /** Reads a number without a unit, if the key is there. */
    public Optional<Double> optionalNumber(String key, double min, double max) {
        return optional(key, node -> Values.number(node, min, max));
    }

    /** Reads yes or no; see {@link Values#truth}. */
    public boolean truth(String key) {
        return Values.truth(need(key, Expected.TRUTH));
    }

    /** Reads yes or no, if the key is there. */
    public Optional<Boolean> optionalTruth(String key) {
        return optional(key, Values::truth);
    }

    /** Reads a date; see {@link Values#date}. */
    public LocalDate date(String key) {
        return Values.date(need(key, DateText.DATE));
    }

    /** Reads a date, if the key is there. */
    public Optional<LocalDate> optionalDate(String key) {
        return optional(key, Values::date);
    }

    /** Reads a moment with its distance from UTC; see {@link Values#moment}. */
    public OffsetDateTime moment(String key) {
        return Values.moment(need(key, DateText.MOMENT));
    }

    /** Reads a moment, if the key is there. */
    public Optional<OffsetDateTime> optionalMoment(String key) {
        return optional(key, Values::moment);
    }

    /** Begins to look at the map under a key. */
    public Fields fields(String key) {
        return Fields.of(need(key, "a map of keys and values"));
    }

    /** Begins to look at the map under a key, if the key is there. */
    public Optional<Fields> optionalFields(String key) {
        return optional(key, Fields::of);
    }

    /** Returns the items of the list under a key. */
    public List<Node> list(String key) {
        return Values.list(need(key, "a list"));
    }

    /** Returns the items of the list under a key; none if the key is absent. */
    public List<Node> optionalList(String key) {
        return optional(key, Values::list).orElse(List.of());
    }

    /** Returns the keys of the map in its own order, for maps whose keys are data. */
    public List<String> keys() {
        return map.keys();
    }

    /** Says whether a key is there with a map as its value. */
    public boolean isMap(String key) {
        return optionalNode(key).map(MapNode.class::isInstance).orElse(false);
    }

    /** Says whether a key is there with a list as its value. */
    public boolean isList(String key) {
        return optionalNode(key).map(ListNode.class::isInstance).orElse(false);
    }

    /** Reads one value, or a list of values, as a list. */
    public <T> List<T> oneOrMore(String key, String allowed, Function<Node, T> reader) {
        return oneOrMore(need(key, allowed), reader);
    }

    private static <T> List<T> oneOrMore(Node node, Function<Node, T> reader) {
        return node instanceof ListNode list
                ? list.items().stream().map(reader).toList()
                : List.of(reader.apply(node));
    }

    /** Reads one quantity or a list of quantities of one dimension; at least one. */
    public List<Quantity> quantities(String key, Dimension dimension) {
        Set<Dimension> dimensions = Set.of(dimension);
        Node node = need(key, () -> Expected.quantity(dimensions));
        List<Quantity> found = oneOrMore(node, n -> Values.quantity(n, dimensions));
        if (found.isEmpty()) {
            String allowed = Expected.quantity(dimensions);
            throw refuse(key, "the list is empty", allowed, "write at least one");
        }
        return found;
    }

    /** Reads one text or a list of texts; none if the key is absent. */
    public List<String> optionalTexts(String key) {
        return has(key) ? oneOrMore(key, "a text or a list of texts", Values::text) : List.of();
    }

    /** Reads one name or a list of names of constants. */
    public <E extends Enum<E>> List<E> choices(String key, E[] constants) {
        Map<String, E> byName = Names.byKebab(constants);
        return oneOrMore(key, String.join(", ", byName.keySet()), n -> Values.choice(n, byName));
    }

    /**
     * Begins to look at the items of the list under a key, keyed {@code 0}, {@code 1} and so on.
     */
    public Fields items(String key) {
        Node list = need(key, "a list");
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        for (Node item : Values.list(list)) {
            entries.put(Integer.toString(entries.size()), new MapNode.Entry(item.at(), item));
        }
        return new Fields(new MapNode(entries, list.at(), list.path()));
    }

    /** Words the refusal of the map as a whole. */
    public DocumentException refuseHere(String problem, String allowed, String nextStep) {
        return Values.refuse(map, problem, allowed, nextStep);
    }

    /** Words the refusal of a key that is data. */
    public DocumentException refuseKey(
            String key, String problem, String allowed, String nextStep) {
        return new DocumentException(
                map.keyAt(key), Paths.key(map.path(), key), key, problem, allowed, nextStep);
    }

    /**
     * Words the refusal of a key's value, for checks that only the loader can make.
     *
     * @param key the key; if it is absent the refusal names the map
     * @param problem what is wrong, a clause
     * @param allowed what would be accepted, or empty
     * @param nextStep what the writer should do, or empty
     * @return the exception, to be thrown
     */
    public DocumentException refuse(String key, String problem, String allowed, String nextStep) {
        return Values.refuse(map.get(key).orElse(map), problem, allowed, nextStep);
    }

    /**
     * Refuses every key that was not asked for.
     *
     * @throws DocumentException at the first such key, naming the known ones and the nearest
     */
    public void end() {
        for (String key : map.keys()) {
            if (!asked.contains(key)) {
                throw new DocumentException(
                        map.keyAt(key),
                        Paths.key(map.path(), key),
                        key,
                        "the key is not known here",
                        asked.isEmpty() ? "no key" : String.join(", ", asked),
                        Nearest.advice(key, asked, strayKeyStep(key)));
            }
        }
    }

    /** A comma in a text that stands in braces without quotes makes a key of what follows. */
    private String strayKeyStep(String key) {
        boolean noValue =
                map.get(key).orElseThrow() instanceof ScalarNode scalar
                        && scalar.kind() == ScalarNode.Kind.NOTHING;
        return noValue
                ? "if it belongs to the text before it, put that whole text in quotes; else"
                        + " remove it"
                : "remove it, or move it where it belongs";
    }

    private <T> Optional<T> optional(String key, Function<Node, T> reader) {
        return optionalNode(key).map(reader);
    }

    private Node need(String key, String allowed) {
        return need(key, () -> allowed);
    }

    /** The words for what is allowed are put together only for a refusal. */
    private Node need(String key, Supplier<String> allowed) {
        return optionalNode(key).orElseThrow(() -> missing(key, allowed.get()));
    }

    /**
     * Words the refusal of a map without a key; where another key looks like it, the refusal points
     * there.
     *
     * @param key the key
     * @param allowed what its value would be
     * @return the exception, to be thrown
     */
    public DocumentException missing(String key, String allowed) {
        String problem = "the key '" + key + "' is missing";
        String form = key + ": " + allowed;
        for (String other : map.keys()) {
            if (!asked.contains(other) && Nearest.isNear(other, key)) {
                return refuseKey(
                        other, problem, form, "did you mean '" + key + "' by '" + other + "'?");
            }
        }
        return Values.refuse(map, problem, form, "add '" + key + "' with " + allowed);
    }
}
