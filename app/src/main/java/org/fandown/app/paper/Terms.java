package org.fandown.app.paper;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.judgement.Judgement;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.DutyTerm;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Ruling;

/**
 * Until when the inspection holds, by when the report is handed in and until when it is kept,
 * counted from the moment of the inspection. Where several rules have a term, the first of the
 * nearest place is taken: packs put the term of this kind of report first.
 */
final class Terms {
    private final Judgement judgement;

    Terms(Judgement judgement) {
        this.judgement = judgement;
    }

    /** The rules whose terms are shown. */
    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>();
        first(Check.INSPECTION_VALIDITY, TermSense.LASTS).ifPresent(rulings::add);
        first(Check.REPORT_SUBMISSION, TermSense.WITHIN).ifPresent(rulings::add);
        first(Check.REPORT_RETENTION, TermSense.KEEP).ifPresent(rulings::add);
        return rulings;
    }

    private Optional<Ruling> first(Check check, TermSense sense) {
        return judgement.rules().of(check).stream()
                .filter(ruling -> term(ruling).map(t -> t.sense() == sense).orElse(false))
                .filter(ruling -> !ruling.rule().id().endsWith(".roadside"))
                .findFirst();
    }

    private static Optional<DutyTerm> term(Ruling ruling) {
        return ruling.limit() instanceof Limit.Duty duty ? duty.term() : Optional.empty();
    }

    void print(Tag page, Sources sources) {
        List<Ruling> rulings = rulings();
        Tag line = page.add("div", "terms");
        if (rulings.isEmpty()) {
            line.text(
                    "No rule is known here on how long the inspection holds or the report is kept.");
            return;
        }
        for (int i = 0; i < rulings.size(); i++) {
            Ruling ruling = rulings.get(i);
            DutyTerm term = term(ruling).orElseThrow();
            OffsetDateTime end = term.term().from(judgement.inspection().moment());
            line.text(i == 0 ? "" : " \u00b7 ");
            line.add("span", "strong").text(lead(term) + " " + end(term, end));
            line.text(
                    " ("
                            + term.term()
                            + (ruling.rule().provenance() == Provenance.FROM_MEMORY
                                    ? ", from memory"
                                    : "")
                            + ") ");
            line.add("span", "cite").text(sources.cite(ruling));
        }
    }

    private static String lead(DutyTerm term) {
        return switch (term.sense()) {
            case LASTS -> "Inspection valid until";
            case WITHIN -> "Hand in by";
            case KEEP -> "Keep until";
        };
    }

    private static String end(DutyTerm term, OffsetDateTime end) {
        return term.sense() == TermSense.LASTS ? Words.minute(end) : end.toLocalDate().toString();
    }
}
