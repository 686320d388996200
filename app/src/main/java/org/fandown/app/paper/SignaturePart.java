package org.fandown.app.paper;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.fandown.check.Check;
import org.fandown.check.ReportItem;
import org.fandown.evidence.Report;
import org.fandown.evidence.Report.Entry;
import org.fandown.judgement.Judgement;

/** Statements with a line for each signature. */
final class SignaturePart {
    /** Widths of the columns (percent) for one block, two blocks and so on. */
    private static final List<List<Integer>> WIDTHS =
            List.of(List.of(100), List.of(55, 45), List.of(44, 26, 30), List.of(34, 20, 24, 22));

    private final Judgement judgement;
    private final Required required;
    private final Report report;
    private final Optional<DrawnSignature> drawn;

    private SignaturePart(ReportContent content, Required required) {
        this.judgement = content.judgement();
        this.required = required;
        this.report = judgement.inspection().report();
        this.drawn = content.drawn();
    }

    static void print(Tag page, ReportContent content, Required required) {
        new SignaturePart(content, required).print(page);
    }

    /** A statement somebody signs, or has signed. */
    private record Block(
            String who,
            String statement,
            String name,
            String given,
            Optional<DrawnSignature> drawn) {
        Block(String who, String statement, String name, String given) {
            this(who, statement, name, given, Optional.empty());
        }

        /** The same as signed by hand: with what was stated then, by whom and when. */
        Block by(Optional<DrawnSignature> signature) {
            return signature
                    .map(
                            s ->
                                    new Block(
                                            who,
                                            s.statement().isEmpty()
                                                    ? statement
                                                    : Clean.entry(s.statement()),
                                            Words.capitals(Clean.entry(s.name())),
                                            given,
                                            signature))
                    .orElse(this);
        }
    }

    private void print(Tag page) {
        List<Block> blocks =
                judgement.inspection().simulated() ? List.of(learner().by(drawn)) : blocks();
        print(page, blocks);
    }

    private List<Block> blocks() {
        return Stream.of(Optional.of(inspector().by(drawn)), driver(), repairs(), review())
                .flatMap(Optional::stream)
                .toList();
    }

    private static void print(Tag page, List<Block> blocks) {
        Tag together = page.add("div", "together");
        together.add("h2").text("Statements and signatures");
        Tag table = together.add("table", blocks.size() == 1 ? "signatures one" : "signatures");
        table.columns(WIDTHS.get(blocks.size() - 1));
        row(table, blocks, SignaturePart::statement);
        row(table, blocks, (cell, block) -> line(cell, "Name in capitals", block.name()));
        row(table, blocks, SignaturePart::sign);
    }

    /** One row for all blocks, so that their lines stand side by side. */
    private static void row(Tag table, List<Block> blocks, BiConsumer<Tag, Block> part) {
        Tag row = table.add("tr");
        blocks.forEach(block -> part.accept(row.add("td"), block));
    }

    /** A report on practice is signed as such, and neither repairs nor reviews follow. */
    private Block learner() {
        return new Block(
                "Learner",
                "I did these tests on a simulated vehicle, for practice. I inspected no real"
                        + " vehicle.",
                name(Entry.INSPECTOR),
                given(Entry.SIGNED));
    }

    private Block inspector() {
        boolean stated = required.asksFor(ReportItem.INSPECTOR_STATEMENT);
        String statement =
                "I inspected this vehicle at the time and place given above, and this report says"
                        + " what I found."
                        + (stated
                                ? " The inspection was made as the rules of "
                                        + judgement.rules().lineage().get(0).name()
                                        + " require."
                                : "");
        return new Block("Inspector", statement, name(Entry.INSPECTOR), given(Entry.SIGNED));
    }

    private Optional<Block> driver() {
        boolean named =
                report.holds(Entry.DRIVER)
                        && !report.entry(Entry.DRIVER).equals(report.entry(Entry.INSPECTOR));
        if (!named && !required.asksFor(ReportItem.DRIVER_SIGNATURE_IF_DIFFERENT)) {
            return Optional.empty();
        }
        String who = named ? "Driver" : "Driver, if another person inspected";
        return Optional.of(
                new Block(
                        who,
                        "I have read this report.",
                        named ? name(Entry.DRIVER) : "",
                        given(Entry.DRIVER_SIGNED)));
    }

    private Optional<Block> repairs() {
        boolean certified =
                required.asksFor(ReportItem.REPAIR_STATEMENT)
                        || required.asksFor(ReportItem.WORK_DONE);
        if (judgement.defects().isEmpty() && !certified) {
            return Optional.empty();
        }
        String done =
                report.entry(Entry.REPAIRS).map(r -> " Work done: " + Clean.entry(r)).orElse("");
        String lines = certified && done.isEmpty() ? " Work done: ____________________" : done;
        return Optional.of(
                new Block(
                        "Repairs, by or for the operator",
                        "Each defect listed: \u2610 was put right  \u2610 needs no repair for safe"
                                + " driving."
                                + lines,
                        "",
                        ""));
    }

    private Optional<Block> review() {
        if (judgement.rules().of(Check.DRIVER_REVIEW).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Block(
                        "Next driver's review",
                        "I have reviewed this report and, where defects are listed, the repair"
                                + " statement.",
                        "",
                        ""));
    }

    private String name(Entry entry) {
        return Words.capitals(Clean.entry(report.entry(entry).orElse("")));
    }

    private String given(Entry entry) {
        return report.holds(entry) ? "The file notes this as signed." : "";
    }

    private static void statement(Tag cell, Block block) {
        cell.add("div", "strong").text(block.who());
        cell.add("div", "statement").text(block.statement());
    }

    private static void sign(Tag cell, Block block) {
        Tag row = cell.add("table", "pen").columns(List.of(60, 40)).add("tr");
        Tag pen = row.add("td");
        block.drawn().ifPresent(drawing -> StrokePen.add(pen, drawing));
        line(pen, "Signature", "");
        moment(row.add("td"), block.drawn().map(DrawnSignature::moment).orElse(""));
        if (!block.given().isEmpty()) {
            cell.add("div", "minor").text(block.given());
        }
    }

    private static void line(Tag cell, String label, String value) {
        Tag line = cell.add("div", "penline");
        line.add("span", "label").text(label + " ");
        line.add("span", "strong").text(value);
    }

    /** A moment is broken between its parts alone. */
    private static void moment(Tag cell, String moment) {
        Tag line = cell.add("div", "penline");
        line.add("span", "label").text("Date and time ");
        for (String part : moment.isEmpty() ? new String[0] : moment.split(" ", -1)) {
            line.add("span", "strong whole").text(part);
            line.text(" ");
        }
    }
}
