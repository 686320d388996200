package org.fandown.app.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.fandown.app.files.FollowedLog;
import org.fandown.check.Check;
import org.fandown.document.Tree;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.plot.ClockText;
import org.fandown.trace.Channel;
import org.fandown.trace.LogReader;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.MarkWord;
import org.fandown.trace.Recognised;
import org.fandown.trace.RecognisedWords;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceNote;
import org.fandown.trace.TraceReadings;
import org.jspecify.annotations.Nullable;

/** Follows a log while it grows and says what it shows, until it ends or somebody ends it. */
final class LiveRun {
    private final String name;
    private final TraceLog log;
    private final Optional<Function<TraceReadings, Judgement>> judge;
    private final LiveVoice voice;
    private final Set<String> notesSaid = new TreeSet<>();
    private List<Check> missing = List.of();
    private boolean pressureSaid;

    /**
     * A run to come.
     *
     * @param name the name of the log
     * @param log what reads it
     * @param judge judges what was read so far, empty without a place
     * @param voice says what happens
     */
    LiveRun(
            String name,
            TraceLog log,
            Optional<Function<TraceReadings, Judgement>> judge,
            LiveVoice voice) {
        this.name = name;
        this.log = log;
        this.judge = judge;
        this.voice = voice;
    }

    /**
     * Follows to the end and finishes the log.
     *
     * @param reader what takes the bytes, the log itself or what stands before it
     * @param quiet after how many seconds without a new byte it ends
     * @param marksTyped whether marks are typed on standard input
     */
    void follow(LogReader reader, double quiet, boolean marksTyped) {
        log.onRecognised(this::recognised);
        TypedMarks typed = marksTyped ? new TypedMarks(System.in) : null;
        voice.say("begin", "Following " + title() + ". " + howItEnds(quiet));
        if (marksTyped) {
            voice.say(
                    "marks", "Type a word and Enter when it happens: " + MarkWord.allowed() + ".");
        }
        missing();
        try (Ending ending = new Ending();
                FollowedLog source = new FollowedLog(name, quiet, voice::say)) {
            FollowedLog.End end = FollowedLog.End.NONE;
            while (end == FollowedLog.End.NONE && !ending.isAsked() && !voice.isUnheard()) {
                end = source.next(name, reader);
                for (String line = next(typed); line != null; line = next(typed)) {
                    typed(line.strip());
                }
                news();
            }
            reader.finish();
            news();
            voice.say("end", ended(end, ending.isAsked()));
        }
    }

    private static @Nullable String next(@Nullable TypedMarks typed) {
        return typed == null ? null : typed.next();
    }

    private void typed(String text) {
        Optional<MarkWord> word = MarkWord.find(text);
        if (text.isEmpty()) {
            return;
        }
        if (word.isEmpty()) {
            String allowed = "Allowed: " + MarkWord.allowed() + ".";
            voice.say("mark-unknown", "There is no mark '" + text + "'. " + allowed);
            return;
        }
        Optional<String> leftOut = log.mark(word.get());
        String said = leftOut.map(why -> " is left out: " + why).orElse(".");
        voice.say(
                leftOut.isEmpty() ? "mark" : "mark-left-out",
                log.seconds(),
                "Mark " + word.get().id() + said,
                map -> map.put("mark", word.get().id()));
    }

    private String title() {
        return name.equals("-") ? "standard input" : name;
    }

    private String howItEnds(double quiet) {
        String ends = name.equals("-") ? "Ends with its input, or Ctrl-C." : "End with Ctrl-C.";
        return Double.isInfinite(quiet)
                ? ends
                : "Ends after "
                        + Tree.number(quiet, 1).text()
                        + " s without a new line, or Ctrl-C.";
    }

    private static String ended(FollowedLog.End end, boolean asked) {
        if (asked) {
            return "Ended by request.";
        }
        return switch (end) {
            case INPUT_ENDED -> "Standard input has ended.";
            case QUIET -> "The log no longer grows.";
            case NONE -> "Nobody reads this any more.";
        };
    }

    private void news() {
        if (!pressureSaid && log.hasPressure()) {
            pressureSaid = true;
            List<String> titles = log.channels().keySet().stream().map(Channel::title).toList();
            voice.say(
                    "pressure",
                    "Pressure comes. Channels so far: " + String.join(", ", titles) + ".");
        }
        for (TraceNote note : log.notes()) {
            if (notesSaid.add(note.kind())) {
                voice.say("note", log.seconds(), note.text(), map -> map.put("kind", note.kind()));
            }
        }
    }

    private void recognised(Recognised found) {
        news();
        StringBuilder text = new StringBuilder(RecognisedWords.text(found));
        text.append(", from ").append(ClockText.tenths(found.from()));
        text.append(" to ").append(ClockText.tenths(found.to())).append('.');
        TraceReadings readings = TraceReadings.of(log.recognised());
        Optional<Judgement> judgement = judge.map(j -> j.apply(readings));
        List<Finding> findings = judgement.map(j -> findings(j, readings, found)).orElse(List.of());
        findings.forEach(f -> text.append(' ').append(words(f)));
        voice.say(
                "recognised",
                log.seconds(),
                text.toString(),
                map -> statuses(map.put("found", TraceDocument.one(found)), findings));
        judgement.ifPresent(judged -> missing(judged, readings));
    }

    private static Tree.MapBuilder statuses(Tree.MapBuilder map, List<Finding> findings) {
        if (findings.isEmpty()) {
            return map;
        }
        Tree.ListBuilder list = Tree.list();
        for (Finding finding : findings) {
            list.add(
                    Tree.map()
                            .put("rule", finding.ruling().rule().id())
                            .put("status", finding.status()));
        }
        return map.put("findings", list);
    }

    /** What the rules that decide say of the check that was just read. */
    @SuppressWarnings("ReferenceEquality") // The very thing that was found, not one like it.
    private static List<Finding> findings(
            Judgement judgement, TraceReadings readings, Recognised found) {
        Set<Check> checks = new TreeSet<>();
        readings.used()
                .forEach(
                        (check, used) -> {
                            if (used == found) {
                                checks.add(check);
                            }
                        });
        return judgement.findings().stream()
                .filter(f -> f.decides() && checks.contains(f.ruling().rule().check()))
                .toList();
    }

    private static String words(Finding finding) {
        String limit = Limits.text(finding);
        return switch (finding.status()) {
            case MET -> "Meets the rule: " + limit + ".";
            case NOT_MET -> "Does not meet the rule: " + limit + ".";
            case SPOILED -> "Does not count for the rule, " + limit + ": " + reason(finding);
            default -> "Open for the rule, " + limit + ": " + reason(finding);
        };
    }

    /** The reason without the words of the rule, which are long to listen to. */
    private static String reason(Finding finding) {
        String reason = finding.why().reason();
        int rule = reason.indexOf(" Rule: ");
        return rule < 0 ? reason : reason.substring(0, rule);
    }

    /** Says once what the place asks for. */
    private void missing() {
        TraceReadings readings = TraceReadings.of(log.recognised());
        judge.ifPresent(j -> missing(j.apply(readings), readings));
    }

    private void missing(Judgement judgement, TraceReadings readings) {
        List<Check> now = TraceCommand.missing(judgement, readings);
        if (now.equals(missing)) {
            return;
        }
        missing = now;
        List<String> titles = now.stream().map(Check::title).toList();
        String text =
                now.isEmpty()
                        ? "Nothing is missing of what the place asks for and a trace can show."
                        : "Still missing, " + now.size() + ": " + String.join("; ", titles) + ".";
        Tree.ListBuilder ids = Tree.list();
        now.forEach(check -> ids.add(check.id()));
        voice.say("missing", Double.NaN, text, map -> map.put("checks", ids));
    }

    /** Says what a sequential test says of a loss that is being measured. */
    void advice(LossAdvice advice) {
        news();
        String text = advice.ended() ? LossWords.ended(advice) : LossWords.running(advice);
        voice.say(
                advice.ended() ? "loss-test-ended" : "loss-test",
                log.seconds(),
                text,
                map -> LossWords.put(map, advice));
    }
}
