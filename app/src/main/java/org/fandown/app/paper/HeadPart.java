package org.fandown.app.paper;

import java.util.List;
import org.fandown.judgement.Judgement;
import org.fandown.record.PracticeNotice;

/** The title line and the verdict with what decided it. */
final class HeadPart {
    private static final int MOST_REASONS = 4;

    private HeadPart() {}

    static void print(Tag page, Judgement judgement) {
        Tag title = page.add("table", "title").columns(List.of(60, 40)).add("tr");
        title.add("td").add("h1").text(ReportPage.kind(judgement.inspection()));
        Tag place = title.add("td", "place");
        place.add("span", "strong").text(Words.place(judgement.rules()));
        place.add("div")
                .text(
                        "Rules of "
                                + judgement.rules().place()
                                + " in force on "
                                + judgement.rules().day());
        practice(page, judgement);
        verdict(page, judgement);
    }

    private static String said(Judgement judgement) {
        String verdict = judgement.verdict().title();
        return judgement.inspection().simulated() ? PracticeNotice.WORD + ": " + verdict : verdict;
    }

    /** Says before the verdict what it is not about. */
    private static void practice(Tag page, Judgement judgement) {
        if (judgement.inspection().simulated()) {
            Tag box = page.add("div", "practice");
            box.add("span", "strong").text(Words.capitals(PracticeNotice.WORD) + ". ");
            box.text(PracticeNotice.TEXT);
        }
    }

    private static void verdict(Tag page, Judgement judgement) {
        String css =
                switch (judgement.verdict()) {
                    case FIT_TO_MOVE -> "verdict fit";
                    case NOT_FIT_TO_MOVE -> "verdict unfit";
                    case NOT_PROVEN -> "verdict unproven";
                };
        Tag row = page.add("table", css).columns(List.of(9, 91)).add("tr");
        row.add("td", "sign").text(Mark.of(judgement.verdict()).sign());
        Tag cell = row.add("td", "says");
        cell.add("div", "big").text(Words.capitals(said(judgement)));
        List<String> because = judgement.because();
        if (because.isEmpty()) {
            cell.add("div")
                    .text(
                            "Every check that the place asks for was made and passed"
                                    + (judgement.defects().isEmpty()
                                            ? "."
                                            : "; minor defects are listed below."));
            return;
        }
        cell.add("div").text(Because.text(because, MOST_REASONS));
    }
}
