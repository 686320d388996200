package org.fandown.evidence;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;

/** Writes statements as the trees that {@link StatementReader} reads back to equal ones. */
public final class StatementDocument {
    private StatementDocument() {}

    /**
     * Writes a statement.
     *
     * @param statement the statement
     * @return a map with one key, that of the statement
     */
    public static MapNode of(Statement statement) {
        if (statement instanceof Statement.Begin begin) {
            return Tree.map().put(StatementKeys.BEGIN, begin.check().id()).build();
        }
        if (statement instanceof Statement.Record said) {
            return Tree.map()
                    .put(StatementKeys.RECORD, ObservationsDocument.of(said.observations()))
                    .build();
        }
        return Tree.map()
                .put(StatementKeys.CONCLUDE, concluded((Statement.Conclude) statement))
                .build();
    }

    private static Tree.MapBuilder concluded(Statement.Conclude said) {
        Tree.MapBuilder map = Tree.map().put(StatementKeys.VERDICT, said.verdict());
        if (said.defects().isEmpty()) {
            return map;
        }
        Tree.ListBuilder defects = Tree.list();
        for (ClaimedDefect defect : said.defects()) {
            String key = defect.check().isPresent() ? StatementKeys.CHECK : StatementKeys.PART;
            Tree.MapBuilder item = Tree.map().put(key, defect.id());
            if (!defect.at().isEmpty()) {
                item.put(StatementKeys.AT, defect.at());
            }
            defects.add(item);
        }
        return map.put(StatementKeys.DEFECTS, defects);
    }
}
