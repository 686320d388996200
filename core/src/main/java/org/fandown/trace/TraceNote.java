package org.fandown.trace;

/**
 * What a person should know about a log before trusting it: once, however often it was met.
 *
 * @param kind a word for it, lower case with hyphens
 * @param line the line where it was met first, 0 where none is meant
 * @param times how often it was met, 1 or more
 * @param text a sentence about the first time
 */
public record TraceNote(String kind, long line, long times, String text) {
    /** Returns the sentence, and how often where that was more than once. */
    public String sentence() {
        return times == 1 ? text : text + " " + times + " times in all.";
    }
}
