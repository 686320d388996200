package org.fandown.browser;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.operator.Guide;
import org.fandown.procedure.PlannedStep;

/** Writes where a guide is, for a page. */
final class GuideDocument {
    private GuideDocument() {}

    static MapNode of(Guide guide) {
        Tree.ListBuilder needs = Tree.list();
        for (Guide.Held held : guide.needs()) {
            needs.add(
                    Tree.map()
                            .put("need", held.need().asked())
                            .put("why", held.need().why())
                            .put("holds", held.holds()));
        }
        Tree.ListBuilder open = Tree.list();
        guide.open().forEach(check -> open.add(check.id()));
        return Tree.map()
                .put("at", guide.now().map(PlannedStep::number).orElse(0))
                .put("needs", needs)
                .put("open", open)
                .build();
    }
}
