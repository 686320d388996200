package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.judgement.Judgement;
import org.fandown.record.FollowingDates;
import org.fandown.record.FollowingDates.Following;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Ruling;

/**
 * Until when the inspection holds, by when the report is handed in and until when it is kept,
 * counted from the moment of the inspection. Where several rules have a term, the first of the
 * nearest place is taken: packs put the term of this kind of report first. What is said of reports
 * of the roadside is not about this one.
 */
final class Terms {
    private static final String OF_THE_ROADSIDE = ".roadside";

    private final List<Following> dates = new ArrayList<>();

    Terms(Judgement judgement) {
        List<Following> all = FollowingDates.of(judgement);
        first(all, Check.INSPECTION_VALIDITY, TermSense.LASTS).ifPresent(dates::add);
        first(all, Check.REPORT_SUBMISSION, TermSense.WITHIN).ifPresent(dates::add);
        first(all, Check.REPORT_RETENTION, TermSense.KEEP).ifPresent(dates::add);
    }

    private static Optional<Following> first(List<Following> all, Check check, TermSense sense) {
        return all.stream()
                .filter(date -> date.sense() == sense)
                .filter(date -> date.ruling().rule().check() == check)
                .filter(date -> !date.ruling().rule().id().endsWith(OF_THE_ROADSIDE))
                .findFirst();
    }

    /** The rules whose terms are shown. */
    List<Ruling> rulings() {
        return dates.stream().map(Following::ruling).toList();
    }

    void print(Tag page, Sources sources) {
        Tag line = page.add("div", "terms");
        if (dates.isEmpty()) {
            line.text(
                    "No rule is known here on how long the inspection holds or the report is kept.");
            return;
        }
        String between = "";
        for (Following date : dates) {
            line.text(between);
            between = " \u00b7 ";
            line.add("span", "strong").text(lead(date) + " " + end(date));
            line.text(" (" + term(date) + memory(date) + ") ");
            line.add("span", "cite").text(sources.cite(date.ruling()));
        }
    }

    private static String lead(Following date) {
        return switch (date.sense()) {
            case LASTS -> "Inspection valid until";
            case WITHIN -> "Hand in by";
            case KEEP -> "Keep until";
        };
    }

    private static String end(Following date) {
        return date.sense() == TermSense.LASTS
                ? Words.minute(date.until())
                : date.until().toLocalDate().toString();
    }

    private static String term(Following date) {
        return date.ruling().limit() instanceof Limit.Duty duty
                ? duty.term().map(term -> term.term().toString()).orElse("")
                : "";
    }

    private static String memory(Following date) {
        return date.ruling().rule().provenance() == Provenance.FROM_MEMORY ? ", from memory" : "";
    }
}
