package org.fandown.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fandown.units.Decimals;

/** Two pressures over time in letters, 80 columns wide, for a terminal. */
public final class TextChart {
    private static final int COLUMNS = 72;
    private static final int ROWS = 16;
    private static final int MARGIN = 6;
    private static final int MARK_WIDTH = 4;
    private static final int MOST_TIMES = 7;
    private static final char FIRST = '*';
    private static final char SECOND = 'o';
    private static final char BOTH = '#';

    private final List<Curve> curves;
    private final List<MarkGroup> groups;
    private final double end;
    private final double top;

    /**
     * Lays a chart out.
     *
     * @param curves one or two curves, in psi over seconds
     * @param marks what happened meanwhile, in order of time
     */
    public TextChart(List<Curve> curves, List<Mark> marks) {
        this.curves = List.copyOf(curves);
        double last = 1;
        double highest = 0;
        for (Curve curve : curves) {
            last = Math.max(last, curve.end());
            highest = Math.max(highest, curve.highest());
        }
        end = last;
        top = Ticks.top(highest);
        groups = MarkGroup.of(marks, end * MARK_WIDTH / (COLUMNS - 1));
    }

    /** Returns the marks by the numbers they have in the chart. */
    public List<MarkGroup> groups() {
        return groups;
    }

    /** Returns the lines of the chart, none longer than 80 letters. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(legend());
        char[][] cells = cells();
        for (int row = ROWS; row >= 0; row--) {
            lines.add((axis(row) + new String(cells[row])).stripTrailing());
        }
        lines.add(" ".repeat(MARGIN - 1) + "+" + "-".repeat(COLUMNS));
        lines.add(times());
        if (!groups.isEmpty()) {
            lines.add(numbers());
        }
        return lines;
    }

    private String legend() {
        String both = curves.size() > 1 ? "  " + SECOND + " " + curves.get(1).name() : "";
        return "  psi  "
                + FIRST
                + " "
                + curves.get(0).name()
                + both
                + (curves.size() > 1 ? "  " + BOTH + " both" : "");
    }

    private String axis(int row) {
        boolean named = row - row / 4 * 4 == 0;
        String figure = named ? Decimals.format(top * row / ROWS, 0) : "";
        return " ".repeat(MARGIN - 2 - figure.length()) + figure + (named ? " +" : " |");
    }

    private char[][] cells() {
        char[][] cells = new char[ROWS + 1][COLUMNS];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        for (int i = 0; i < curves.size(); i++) {
            draw(curves.get(i), i == 0 ? FIRST : SECOND, cells);
        }
        return cells;
    }

    /** Of each column the lowest and the highest value, and all between; if none, as before. */
    private void draw(Curve curve, char letter, char[][] cells) {
        int[] low = new int[COLUMNS];
        int[] high = new int[COLUMNS];
        Arrays.fill(low, ROWS + 1);
        Arrays.fill(high, -1);
        for (int i = 0; i < curve.size(); i++) {
            int column = column(curve.time(i));
            int row = row(curve.value(i));
            low[column] = Math.min(low[column], row);
            high[column] = Math.max(high[column], row);
        }
        int last = column(curve.end());
        for (int column = 0; column <= last; column++) {
            if (high[column] < 0 && column > 0) {
                low[column] = low[column - 1];
                high[column] = high[column - 1];
            }
            for (int row = low[column]; row <= high[column]; row++) {
                boolean other = cells[row][column] != ' ' && cells[row][column] != letter;
                cells[row][column] = other ? BOTH : letter;
            }
        }
    }

    private int column(double seconds) {
        return (int) Math.floor(Math.min(1, Math.max(0, seconds / end)) * (COLUMNS - 1) + 0.5);
    }

    private int row(double psi) {
        return (int) Math.floor(Math.min(1, Math.max(0, psi / top)) * ROWS + 0.5);
    }

    private String times() {
        StringBuilder line = new StringBuilder();
        for (double seconds : Ticks.seconds(end, MOST_TIMES)) {
            String text = ClockText.whole(seconds);
            int at = Math.min(MARGIN + column(seconds), MARGIN + COLUMNS - text.length());
            place(line, at, text);
        }
        return line.toString();
    }

    private String numbers() {
        StringBuilder line = new StringBuilder();
        for (MarkGroup group : groups) {
            String text = Integer.toString(group.number());
            int at =
                    Math.min(
                            MARGIN + column(group.seconds()), MARGIN + COLUMNS + 2 - text.length());
            place(line, at, text);
        }
        return line.toString();
    }

    private static void place(StringBuilder line, int at, String text) {
        if (line.length() <= at) {
            line.append(" ".repeat(at - line.length())).append(text);
        }
    }
}
