package org.fandown.app.files;

import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in our own words what is wrong with a text that is not YAML. */
final class YamlProblems {
    /** What the parser says, what we say, and what to do about it. */
    private static final String[][] WORDS = {
        {
            "mapping values are not allowed",
            "a colon stands where no key can be",
            "check the indent, or put a value that holds a colon in quotes"
        },
        {
            "could not find expected ':'",
            "a colon is missing",
            "put a colon and a space after the key"
        },
        {
            "expected <block end>",
            "the line does not fit the ones above it",
            "give all keys of one map and all items of one list the same indent"
        },
        {"unexpected end of stream", "a text in quotes does not end", "add the closing quote"},
        {
            "cannot start any token",
            "a value cannot begin with this character",
            "put the value in quotes"
        },
        {"expected ',' or", "a bracket is not closed", "add the comma or the closing bracket"},
        {"sequence entries are not allowed", "a list cannot begin here", "put it on a new line"},
        {"unknown escape character", "the escape is unknown", "use single quotes, or double '\\'"},
    };

    private YamlProblems() {}

    static DocumentException translate(
            String file, String text, MarkedYamlEngineException problem) {
        Optional<Mark> mark = problem.getProblemMark();
        Position at =
                mark.map(m -> new Position(file, m.getLine() + 1, m.getColumn() + 1))
                        .orElse(Position.inFile(file));
        int index = mark.map(Mark::getIndex).orElse(0);
        if (isTab(text, index)) {
            return new DocumentException(
                    at,
                    "",
                    "",
                    "a tab stands where YAML allows only spaces",
                    "spaces",
                    "replace the tab by spaces");
        }
        for (String[] words : WORDS) {
            if (String.valueOf(problem.getProblem()).contains(words[0])) {
                return new DocumentException(at, "", "", words[1], "YAML 1.2", words[2]);
            }
        }
        return unreadable(at);
    }

    static DocumentException unreadable(Position at) {
        return new DocumentException(
                at,
                "",
                "",
                "this cannot be read as YAML",
                "YAML 1.2",
                "check the indent, the colons and the quotes of this line");
    }

    /** Refuses the characters that YAML does not allow anywhere, at their place. */
    static void requirePrintable(String file, String text) {
        int line = 1;
        int column = 1;
        int i = 0;
        while (i < text.length()) {
            int point = text.codePointAt(i);
            if (!isPrintable(point)) {
                throw new DocumentException(
                        new Position(file, line, column),
                        "",
                        "",
                        "a character that no text may hold stands here: code "
                                + Integer.toHexString(point),
                        "printable characters",
                        "remove it, or save the file again as UTF-8 text");
            }
            i += Character.charCount(point);
            boolean crlf = point == '\r' && i < text.length() && text.charAt(i) == '\n';
            boolean lineEnds = point == '\n' || (point == '\r' && !crlf);
            line += lineEnds ? 1 : 0;
            column = lineEnds ? 1 : column + 1;
        }
    }

    private static boolean isPrintable(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point <= 0x7e)
                || point == 0x85
                || (point >= 0xa0 && point <= 0xd7ff)
                || (point >= 0xe000 && point <= 0xfffd && point != 0xfeff)
                || point >= 0x10000;
    }

    /** Says whether a tab stands at a place that is counted in code points. */
    private static boolean isTab(String text, int codePoint) {
        if (codePoint > text.codePointCount(0, text.length())) {
            return false;
        }
        int at = text.offsetByCodePoints(0, codePoint);
        return at < text.length() && text.charAt(at) == '\t';
    }
}
