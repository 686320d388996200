package org.fandown.document;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fandown.document.ScalarNode.Kind;
import org.fandown.units.Decimals;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;

/**
 * Reads single nodes strictly. Each method raises a {@link DocumentException} that names the place
 * of the node if the node is not what the method says. {@link Fields} does the same for the keys of
 * a map.
 */
public final class Values {
    private static final int MAX_INTEGER_DIGITS = 18;

    private Values() {}

    /**
     * Reads a text. A number or truth value is taken as it was written; a blank text is refused.
     *
     * @param node the node
     * @return the text
     * @throws DocumentException if the node is a map, a list, nothing or blank
     */
    public static String text(Node node) {
        String text = scalar(node, "a text").text();
        if (text.isBlank()) {
            throw refuse(node, "the text is empty", "a text", "write a text or remove the key");
        }
        return text;
    }

    /**
     * Reads one of several names.
     *
     * @param node the node
     * @param choices what each name stands for
     * @param <T> the type of what they stand for
     * @return what the name stands for
     * @throws DocumentException if the node is no such name
     */
    public static <T> T choice(Node node, Map<String, T> choices) {
        String name = scalar(node, () -> Expected.oneOf(choices)).text();
        T choice = choices.get(name);
        if (choice == null) {
            String step = Nearest.advice(name, choices.keySet(), "take one of these names");
            String allowed = Expected.oneOf(choices);
            throw refuse(node, "this is not one of the names known here", allowed, step);
        }
        return choice;
    }

    /**
     * Reads the name of a constant, in lower case with hyphens.
     *
     * @param node the node
     * @param constants the constants that will do, as a rule {@code values()} of their type
     * @param <E> their type
     * @return the constant
     * @throws DocumentException if the node is no such name
     */
    public static <E extends Enum<E>> E choice(Node node, E[] constants) {
        if (node instanceof ScalarNode scalar) {
            for (E constant : constants) {
                if (Names.isKebab(constant, scalar.text())) {
                    return constant;
                }
            }
        }
        return choice(node, Names.byKebab(constants));
    }

    /**
     * Reads a quantity.
     *
     * @param node the node
     * @param dimension the dimension needed
     * @return the quantity as entered
     * @throws DocumentException if the node is no quantity of that dimension
     */
    public static Quantity quantity(Node node, Dimension dimension) {
        return quantity(node, Set.of(dimension));
    }

    /**
     * Reads a quantity.
     *
     * @param node the node
     * @param dimensions the dimensions that will do, at least one
     * @return the quantity as entered
     * @throws DocumentException if the node is no quantity of such a dimension
     */
    public static Quantity quantity(Node node, Set<Dimension> dimensions) {
        String text = scalar(node, () -> Expected.quantity(dimensions)).text();
        try {
            return Quantity.parse(text, dimensions);
        } catch (QuantityFormatException e) {
            throw refuse(node, e.problem(), e.allowed(), e.nextStep());
        }
    }

    /**
     * Reads a whole number.
     *
     * @param node the node
     * @param min the least number allowed
     * @param max the greatest number allowed
     * @return the number
     * @throws DocumentException if the node is no whole number in that range
     */
    public static int integer(Node node, int min, int max) {
        ScalarNode scalar = scalar(node, () -> Expected.integer(min, max));
        String text = scalar.text();
        int start = text.startsWith("-") ? 1 : 0;
        boolean whole =
                scalar.kind() == Kind.NUMBER
                        && Texts.digits(text, start) == text.length()
                        && text.length() <= MAX_INTEGER_DIGITS;
        if (!whole) {
            String allowed = Expected.integer(min, max);
            throw refuse(node, "this is not a whole number", allowed, "write digits only");
        }
        long number = Long.parseLong(text);
        if (number < min || number > max) {
            String allowed = Expected.integer(min, max);
            throw refuse(node, "the number is out of range", allowed, "correct the number");
        }
        return (int) number;
    }

    /**
     * Reads a number without a unit.
     *
     * @param node the node
     * @param min the least number allowed
     * @param max the greatest number allowed
     * @return the number
     * @throws DocumentException if the node is no plain decimal in that range
     */
    public static double number(Node node, double min, double max) {
        ScalarNode scalar = scalar(node, () -> Expected.number(min, max));
        if (scalar.kind() != Kind.NUMBER || !Decimals.isDecimal(scalar.text())) {
            String step = "write digits with a point, without unit, quotes or exponent";
            String allowed = Expected.number(min, max);
            throw refuse(node, "this is not a plain number", allowed, step);
        }
        double number = Decimals.parse(scalar.text());
        if (!(number >= min && number <= max)) {
            String allowed = Expected.number(min, max);
            throw refuse(node, "the number is out of range", allowed, "correct the number");
        }
        return number;
    }

    /**
     * Reads yes or no; {@code true} and {@code false} mean the same.
     *
     * @param node the node
     * @return whether it says yes
     * @throws DocumentException if the node is none of the four
     */
    public static boolean truth(Node node) {
        String text = scalar(node, Expected.TRUTH).text();
        if (text.equals("yes") || text.equals("true")) {
            return true;
        }
        if (text.equals("no") || text.equals("false")) {
            return false;
        }
        throw refuse(node, "this is neither yes nor no", Expected.TRUTH, "write yes or no");
    }

    /**
     * Reads a date of the calendar.
     *
     * @param node the node
     * @return the date
     * @throws DocumentException if the node is no date written as year, month and day
     */
    public static LocalDate date(Node node) {
        return calendar(node, DateText.DATE, "2026-11-25", DateText::date);
    }

    /**
     * Reads a moment with its distance from UTC.
     *
     * @param node the node
     * @return the moment
     * @throws DocumentException if the node is no date with time of day and distance from UTC
     */
    public static OffsetDateTime moment(Node node) {
        return calendar(node, DateText.MOMENT, "2026-11-25T08:15:00-08:00", DateText::moment);
    }

    /**
     * Reads a list.
     *
     * @param node the node
     * @return its items, perhaps none
     * @throws DocumentException if the node is no list
     */
    public static List<Node> list(Node node) {
        if (node instanceof ListNode list) {
            return list.items();
        }
        throw wrongShape(node, "a list");
    }

    /**
     * Words the refusal of a node, for checks that only the caller can make.
     *
     * @param node the node
     * @param problem what is wrong, a clause
     * @param allowed what would be accepted, or empty
     * @param nextStep what the writer should do, or empty
     * @return the exception, to be thrown
     */
    public static DocumentException refuse(
            Node node, String problem, String allowed, String nextStep) {
        String value = node instanceof ScalarNode scalar ? scalar.text() : "";
        return new DocumentException(node.at(), node.path(), value, problem, allowed, nextStep);
    }

    static DocumentException wrongShape(Node node, String allowed) {
        boolean nothing = node instanceof ScalarNode scalar && scalar.kind() == Kind.NOTHING;
        if (nothing) {
            String step = "write a value, or remove the key";
            return new DocumentException(
                    node.at(), node.path(), "", "there is no value", allowed, step);
        }
        return refuse(node, node.phrase() + " cannot stand here", allowed, "write " + allowed);
    }

    private static ScalarNode scalar(Node node, String allowed) {
        return scalar(node, () -> allowed);
    }

    /** The words for what is allowed are put together only for a refusal. */
    private static ScalarNode scalar(Node node, Supplier<String> allowed) {
        if (node instanceof ScalarNode scalar && scalar.kind() != Kind.NOTHING) {
            return scalar;
        }
        throw wrongShape(node, allowed.get());
    }

    private static <T> T calendar(
            Node node, String allowed, String example, Function<String, T> reader) {
        String text = scalar(node, allowed).text();
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            String problem = String.valueOf(e.getMessage());
            throw refuse(node, problem, allowed, "write it like '" + example + "'");
        }
    }
}
