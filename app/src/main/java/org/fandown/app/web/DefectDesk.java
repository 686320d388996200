package org.fandown.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Telling;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.EarlierDefect;
import org.fandown.evidence.Inspection;
import org.fandown.record.DefectLedger;
import org.fandown.record.DefectStory;
import org.fandown.record.Review;
import org.fandown.record.Settlement;
import org.fandown.record.VehicleKey;

/**
 * Knows what is wrong with every vehicle, from its records. What was read once is remembered, and
 * only what arrived since is read again. Safe for use by several threads.
 */
final class DefectDesk {
    /** Key of the id of the older record that a record takes the place of. */
    static final String CORRECTS = "corrects";

    /** Where a statement has what the site said of the content. */
    private static final String SAID = "judgement";

    /** The judge and a person are told of so many at most; the vehicle stands still long before. */
    private static final int MOST_TOLD = 50;

    private static final int MOST_REMEMBERED = 1000;
    private static final float LOAD = 0.75f;

    private final RecordStore store;
    private final Map<String, Book> books =
            new LinkedHashMap<>(16, LOAD, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Book> eldest) {
                    return size() > MOST_REMEMBERED;
                }
            };

    DefectDesk(RecordStore store) {
        this.store = store;
    }

    /** The ledger of a chain, and up to which record it was told. */
    private static final class Book {
        private final DefectLedger ledger = new DefectLedger();
        private long told;
    }

    /** What is wrong with what was inspected and was not settled yet, oldest first. */
    List<EarlierDefect> openFor(Inspection inspection) {
        List<EarlierDefect> open = new ArrayList<>();
        for (String key : VehicleKey.all(inspection)) {
            open(key).forEach(story -> open.add(story.earlier()));
        }
        return open.subList(0, Math.min(open.size(), MOST_TOLD));
    }

    /** What is open in the chain of a key. */
    List<DefectStory> open(String key) {
        Book book = book(key);
        synchronized (book) {
            return tell(key, book).open();
        }
    }

    /** The defects of one report. */
    List<DefectStory> of(String key, String report) {
        Book book = book(key);
        synchronized (book) {
            return tell(key, book).of(report);
        }
    }

    /** What was open when a record arrived, as the site said then. */
    static List<EarlierDefect> earlier(KeptRecord record) {
        Fields statement = Fields.of(Json.read("statement.json", record.statement()));
        return statement.has(SAID) ? EarlierDefect.list(statement.fields(SAID)) : List.of();
    }

    private Book book(String key) {
        synchronized (books) {
            return books.computeIfAbsent(key, k -> new Book());
        }
    }

    private DefectLedger tell(String key, Book book) {
        for (Telling telling : store.tellings(key, book.told)) {
            tell(book.ledger, telling);
            book.told = telling.number();
        }
        return book.ledger;
    }

    private static void tell(DefectLedger ledger, Telling telling) {
        Fields statement = Fields.of(Json.read("statement.json", telling.statement()));
        if (!statement.has(SAID)) {
            return;
        }
        Node said = statement.node(SAID);
        Fields.of(said).optionalText(CORRECTS).ifPresent(ledger::corrected);
        switch (telling.kind()) {
            case "inspection" -> ledger.reported(telling.id(), said);
            case Settlement.KIND ->
                    ledger.settled(
                            telling.id(),
                            telling.made(),
                            Settlement.read(Fields.of(said).node(Settlement.KIND)));
            case Review.KIND ->
                    ledger.reviewed(
                            telling.id(),
                            telling.made(),
                            Review.read(Fields.of(said).node(Review.KIND)));
            default -> {}
        }
    }
}
