package org.fandown.app.paper;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.fandown.judgement.Measurement;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Decimals;
import org.fandown.units.Quantities;
import org.fandown.units.Unit;

/** Texts the parts of the report share. */
final class Words {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int EDGE_DECIMALS = 2;
    private static final char NO_BREAK = '\u00a0';

    private Words() {}

    /** Date, time and offset: {@code 2026-11-25 07:10 UTC-05:00}. */
    static String moment(OffsetDateTime moment) {
        String offset = moment.getOffset().getId();
        return minute(moment) + " UTC" + (offset.equals("Z") ? "" : offset);
    }

    static String minute(OffsetDateTime moment) {
        return MINUTE.format(moment);
    }

    /** A long row of digits in groups that can be compared by eye and broken into lines. */
    static String inGroups(String digits) {
        return digits.replaceAll("(.{8})(?=.)", "$1 ");
    }

    /** A name in capitals, as some places ask for legible letters. */
    static String capitals(String name) {
        return name.toUpperCase(Locale.ROOT);
    }

    /** The place with those it inherits from: {@code Ontario, Canada}. */
    static String place(RulesInForce rules) {
        return String.join(", ", rules.lineage().stream().map(Pack::name).toList());
    }

    static String value(Measurement measured) {
        return quantity(measured.value(), measured.unit());
    }

    /** A quantity that is never broken over two lines. */
    static String quantity(double value, Unit unit) {
        return Quantities.print(value, unit).replace(' ', NO_BREAK);
    }

    /** The interval of a measurement, empty if it is taken as exact. */
    static String interval(Measurement measured) {
        if (!(measured.uncertainty() > 0)) {
            return "";
        }
        return edge(measured.low())
                + " to "
                + edge(measured.high())
                + " "
                + measured.unit().symbol();
    }

    private static String edge(double value) {
        return Decimals.formatShort(value, EDGE_DECIMALS);
    }

    static String capital(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    static String small(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    /** A sentence without its full stop, to stand inside another. */
    static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    static String spaced(String id) {
        return id.replace('-', ' ');
    }
}
