package org.fandown.app.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.check.Component;
import org.fandown.check.ReportItem;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Judgement;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.w3c.dom.Document;

/** Lays the report out as a page tree. */
final class ReportPage {
    private final ReportContent content;
    private final Judgement judgement;
    private final Inspection inspection;
    private final Required required;
    private final List<Row> rows;
    private final Terms terms;
    private final Sources sources;

    private ReportPage(ReportContent content) {
        this.content = content;
        this.judgement = content.judgement();
        this.inspection = judgement.inspection();
        this.required = inspection.simulated() ? Required.NOTHING : Required.by(judgement.rules());
        this.rows = Row.of(judgement.findings());
        this.terms = new Terms(judgement);
        this.sources = new Sources(cited());
    }

    /** The page of a report, its letters as large as the density allows. */
    static Document of(ReportContent content, Density density) {
        return new ReportPage(content).lay(density);
    }

    /** How many letters a page holds. */
    static int letters(Document page) {
        return page.getElementsByTagName("body").item(0).getTextContent().length();
    }

    /** What kind of report it is. */
    static String kind(Inspection inspection) {
        return inspection.simulated()
                ? "Air-brake practice report, simulated"
                : "Air-brake inspection report";
    }

    /** What the document calls itself. */
    static String title(Inspection inspection) {
        return kind(inspection)
                + ", "
                + Clean.text(Clean.entry(inspection.vehicle().name()))
                + ", "
                + Words.minute(inspection.moment());
    }

    private List<Ruling> cited() {
        Map<String, Ruling> cited = new LinkedHashMap<>();
        rows.forEach(row -> cited.put(row.rule().id(), row.ruling()));
        required.rulings().forEach(ruling -> cited.put(ruling.rule().id(), ruling));
        terms.rulings().forEach(ruling -> cited.put(ruling.rule().id(), ruling));
        SmallPrintPart.conflictsOf(judgement)
                .forEach(aside -> cited.put(aside.ruling().rule().id(), aside.ruling()));
        return List.copyOf(cited.values());
    }

    private Document lay(Density density) {
        Tag html = Tag.root("html").set("lang", "en");
        Tag head = html.add("head");
        head.add("title").text(title(inspection));
        head.add("meta").set("name", "description").set("content", title(inspection));
        head.add("style").text(Style.sheet(PaperSize.of(inspection.place()), density));
        Tag body = html.add("body");
        footer(body);
        HeadPart.print(body, judgement);
        IdentityPart.print(body, inspection, required);
        panels(body, density);
        FindingsPart.print(body, rows, sources);
        ListsPart.print(body, rows, sources);
        extras(body);
        if (!inspection.simulated()) {
            terms.print(body, sources);
        }
        SignaturePart.print(body, content, required);
        SmallPrintPart.print(body, content, required, sources);
        content.trace().ifPresent(trace -> TracePart.print(body, trace));
        PhotosPart.print(body, content.photos());
        return html.document();
    }

    private void footer(Tag body) {
        Tag foot = body.add("div", "footer");
        foot.text("Fandown \u00b7 " + title(inspection) + " \u00b7 page ");
        foot.add("span", "pageno");
        foot.text(
                " \u00b7 the same content for machines: attached "
                        + (files().size() == 1 ? "file " : "files ")
                        + String.join(", ", files()));
    }

    private List<String> files() {
        return List.copyOf(Finish.files(content).keySet());
    }

    private void panels(Tag body, Density density) {
        Tag row = body.add("table", "panels").columns(List.of(58, 42)).add("tr");
        Tag axles = row.add("td", "axles");
        AxlesPart.print(axles, judgement, density);
        Tag side = row.add("td", "side");
        DefectsPart.print(side, judgement);
        // The estimate goes where there is more room.
        boolean fewAxles = inspection.vehicle().axleCount() < judgement.defects().size();
        content.strokesMean()
                .ifPresent(summary -> BrakingPart.print(fewAxles ? axles : side, summary));
    }

    private void extras(Tag body) {
        if (required.asksFor(ReportItem.PARTS_INSPECTED)) {
            paragraph(body, "Parts inspected: ", parts());
        }
        if (!inspection.notes().isEmpty()) {
            List<String> notes = inspection.notes().stream().map(Clean::entry).toList();
            paragraph(body, "Notes: ", String.join(" ", notes));
        }
    }

    private static void paragraph(Tag body, String lead, String text) {
        Tag line = body.add("div", "terms");
        line.add("span", "strong").text(lead);
        line.text(text);
    }

    private String parts() {
        Map<Component, String> seen = new LinkedHashMap<>();
        inspection.parts().keySet().forEach(part -> seen.put(part, part.title()));
        if (inspection.allOtherPartsSeen()) {
            for (Row row : rows) {
                if (row.ruling().limit() instanceof Limit.LookAt lookAt) {
                    lookAt.parts().forEach(part -> seen.put(part, part.title()));
                } else if (row.ruling().limit() instanceof Limit.Absent absent) {
                    seen.put(absent.on(), absent.on().title());
                }
            }
        }
        return seen.isEmpty() ? "none noted" : String.join(", ", seen.values()) + ".";
    }
}
