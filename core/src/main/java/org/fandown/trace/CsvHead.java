package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;

/** The head of a table: which column holds what, in which unit. */
final class CsvHead {
    /** A head that names what can be read, for refusals. */
    static final String EXAMPLE = "time s,primary psi,secondary psi,engine rpm,foot brake %";

    /** The head of the column that says whether a row comes from a simulation. */
    private static final String SIMULATED = "simulated";

    /** The head of the column with marks. */
    private static final String MARK = "mark";

    /**
     * A column.
     *
     * @param name what it holds
     * @param unit its unit, null for a switch
     * @param title the head as written
     */
    record Column(CsvNames.Name name, @Nullable Unit unit, String title) {
        double inChannel(double value) {
            if (unit == null) {
                boolean on = value > 0.5;
                return on == name.inverted() ? 0 : 1;
            }
            return unit.convert(value, name.channel().unit().orElse(unit));
        }
    }

    private final String file;
    private final long line;
    private final char separator;
    private final List<@Nullable Column> columns = new ArrayList<>();
    private final List<@Nullable Column> seconds = new ArrayList<>();
    private final List<String> ignored = new ArrayList<>();
    private int time = -1;
    private int simulated = -1;
    private int mark = -1;

    private CsvHead(String file, long line, char separator) {
        this.file = file;
        this.line = line;
        this.separator = separator;
    }

    /** Whether a first line is the head of a table: it names a time or a channel. */
    static boolean isHead(String text) {
        return cells(text, separator(text)).stream()
                .map(CsvHead::small)
                .anyMatch(c -> CsvNames.time(c).isPresent() || CsvNames.find(c).isPresent());
    }

    /** Whether a line names a time and a circuit, so that it is a head wherever it stands. */
    static boolean isWhole(String text) {
        List<String> cells = cells(text, separator(text)).stream().map(CsvHead::small).toList();
        return cells.stream().anyMatch(c -> CsvNames.time(c).isPresent())
                && cells.stream()
                        .flatMap(c -> CsvNames.find(c).stream())
                        .anyMatch(n -> isCircuit(n.channel()));
    }

    /**
     * Reads a head.
     *
     * @throws DocumentException if it has no time, no circuit, an unknown unit or something twice
     */
    static CsvHead of(String file, long line, String text) {
        CsvHead head = new CsvHead(file, line, separator(text));
        List<String> cells = cells(text, head.separator);
        for (int i = 0; i < cells.size(); i++) {
            head.add(i, cells.get(i));
        }
        head.keepOne();
        if (head.time < 0) {
            throw head.refuse("", "no column holds the time", "a column 'time s' or 'time'");
        }
        if (head.columns.stream().noneMatch(CsvHead::isCircuit)) {
            throw head.refuse(
                    "",
                    "no column holds the pressure of a brake circuit",
                    "columns such as 'primary psi', 'secondary kPa' or 'primary needle bar'");
        }
        return head;
    }

    private static boolean isSameChannel(Column one, Column other) {
        return one.name().channel() == other.name().channel();
    }

    private static boolean isCircuit(@Nullable Column column) {
        return column != null && isCircuit(column.name().channel());
    }

    static boolean isCircuit(Channel channel) {
        return channel == Channel.PRIMARY || channel == Channel.SECONDARY;
    }

    char separator() {
        return separator;
    }

    int time() {
        return time;
    }

    /** The column that says whether a row comes from a simulation, -1 if there is none. */
    int simulated() {
        return simulated;
    }

    /** The column that a person's marks stand in, -1 if there is none. */
    int mark() {
        return mark;
    }

    int size() {
        return columns.size();
    }

    @Nullable Column column(int index) {
        return columns.get(index);
    }

    /** A column whose circuit is read from another one, so that both can be compared. */
    @Nullable Column second(int index) {
        return seconds.get(index);
    }

    /** Heads of columns that are not read. */
    List<String> ignored() {
        return ignored;
    }

    private void add(int index, String title) {
        String cell = small(title);
        Optional<String> named = CsvNames.time(cell);
        Column column = null;
        if (named.isPresent()) {
            time(index, title, unit(cell, named.get()));
        } else if (cell.equals(SIMULATED)) {
            simulated(index, title);
        } else if (cell.equals(MARK)) {
            mark(index, title);
        } else {
            column = column(title, cell);
            if (column == null) {
                ignored.add(title);
            }
        }
        columns.add(column);
        seconds.add(null);
    }

    private void mark(int index, String title) {
        if (mark >= 0) {
            throw refuse(title, "two columns hold marks", "one");
        }
        mark = index;
    }

    private void time(int index, String title, String unit) {
        if (time >= 0) {
            throw refuse(title, "two columns hold the time", "one");
        }
        if (!List.of("", "s", "sec", "seconds").contains(unit)) {
            throw refuse(title, "this unit of time is not read", "'time s' in seconds, or 'time'");
        }
        time = index;
    }

    private void simulated(int index, String title) {
        if (simulated >= 0) {
            throw refuse(title, "two columns hold the same", "one column for each thing");
        }
        simulated = index;
    }

    private @Nullable Column column(String title, String cell) {
        Optional<CsvNames.Name> name = CsvNames.find(cell);
        if (name.isEmpty()) {
            return null;
        }
        Channel channel = name.get().channel();
        String unit = unit(cell, name.get().text());
        List<Unit> units = CsvNames.units(channel);
        if (units.isEmpty()) {
            return unit.isEmpty() ? new Column(name.get(), null, title) : null;
        }
        for (Unit each : units) {
            if (small(each.symbol()).equals(unit)) {
                return new Column(name.get(), each, title);
            }
        }
        boolean bracketed = title.endsWith(")") || title.endsWith("]");
        boolean meant = bracketed || unit.isEmpty() || CsvNames.isCircuit(channel);
        if (unit.indexOf(' ') >= 0 || !meant) {
            return null;
        }
        String allowed = String.join(", ", units.stream().map(Unit::symbol).toList());
        String problem = unit.isEmpty() ? "the unit is missing" : "this unit is not read";
        throw refuse(title, problem, "'" + name.get().text() + "' with one of: " + allowed);
    }

    /** Of several columns for one channel only the one named first in the list of names stays. */
    private void keepOne() {
        for (int i = 0; i < columns.size(); i++) {
            Column one = columns.get(i);
            for (int k = 0; one != null && k < columns.size(); k++) {
                Column other = columns.get(k);
                if (k != i && other != null && isSameChannel(one, other)) {
                    drop(one, i, other, k);
                    one = columns.get(i);
                }
            }
        }
    }

    private void drop(Column one, int i, Column other, int k) {
        if (one.name().equals(other.name())) {
            throw refuse(other.title(), "two columns hold the same", "one column for each thing");
        }
        List<CsvNames.Name> order = CsvNames.all();
        boolean first = order.indexOf(one.name()) < order.indexOf(other.name());
        Column dropped = first ? other : one;
        columns.set(first ? k : i, null);
        ignored.add(dropped.title());
        boolean compared = seconds.stream().anyMatch(s -> s != null && isSameChannel(s, dropped));
        if (isCircuit(dropped) && !compared) {
            seconds.set(first ? k : i, dropped);
        }
    }

    private static String unit(String cell, String name) {
        String rest = cell.substring(name.length()).strip();
        boolean bracketed = rest.startsWith("(") || rest.startsWith("[");
        return bracketed ? rest.substring(1, Math.max(1, rest.length() - 1)).strip() : rest;
    }

    private DocumentException refuse(String title, String problem, String allowed) {
        return new DocumentException(
                new Position(file, (int) Math.min(line, Integer.MAX_VALUE), 0),
                "",
                title,
                problem,
                allowed,
                "write a head such as '" + EXAMPLE + "'");
    }

    private static char separator(String text) {
        return text.indexOf(';') >= 0 ? ';' : ',';
    }

    private static List<String> cells(String text, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    private static String small(String text) {
        StringBuilder small = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            small.append(c >= 'A' && c <= 'Z' ? (char) (c + 32) : c == '_' ? ' ' : c);
        }
        return small.toString();
    }
}
