package org.fandown.app.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.Source;

/**
 * The numbered list of sources. A work has a number, each place in it a letter: {@code [3b]}; a
 * work of which one place is cited has the number alone.
 */
final class Sources {
    private final Map<Work, List<String>> works = new LinkedHashMap<>();

    /** One work as far as it was looked at in one way and on one day. */
    private record Work(String title, String edition, Provenance provenance, LocalDate verifiedOn) {
        static Work of(Ruling ruling) {
            Source source = ruling.value().source();
            return new Work(
                    source.work(),
                    source.edition(),
                    ruling.rule().provenance(),
                    ruling.rule().verifiedOn());
        }
    }

    /** The list for the rulings a report names, numbered in the order given. */
    Sources(Collection<Ruling> rulings) {
        for (Ruling ruling : rulings) {
            List<String> sections =
                    works.computeIfAbsent(Work.of(ruling), work -> new ArrayList<>());
            String section = ruling.value().source().section();
            if (!sections.contains(section)) {
                sections.add(section);
            }
        }
    }

    /**
     * The mark that points to a ruling's source.
     *
     * @throws IllegalArgumentException if the ruling was not among those the list was made for
     */
    String cite(Ruling ruling) {
        Work work = Work.of(ruling);
        List<String> sections = works.get(work);
        if (sections == null) {
            throw new IllegalArgumentException(ruling.rule().id() + " is not in the list.");
        }
        int number = new ArrayList<>(works.keySet()).indexOf(work) + 1;
        String letter =
                sections.size() == 1
                        ? ""
                        : letter(sections.indexOf(ruling.value().source().section()));
        return "[" + number + letter + "]";
    }

    /** The day on which most were last checked, empty if nothing is cited. */
    Optional<LocalDate> lastChecked() {
        Map<LocalDate, Integer> days = new TreeMap<>();
        works.keySet().forEach(work -> days.merge(work.verifiedOn(), 1, Integer::sum));
        return days.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** The entries, each with its number; text that was read on the usual day has no remark. */
    List<String> entries() {
        List<String> entries = new ArrayList<>();
        works.forEach(
                (work, sections) ->
                        entries.add("[" + (entries.size() + 1) + "] " + entry(work, sections)));
        return entries;
    }

    private String entry(Work work, List<String> sections) {
        StringBuilder text = new StringBuilder(work.title());
        text.append(", ").append(work.edition()).append(": ");
        for (int i = 0; i < sections.size(); i++) {
            text.append(i == 0 ? "" : "; ");
            text.append(sections.size() == 1 ? "" : letter(i) + ") ").append(sections.get(i));
        }
        text.append('.');
        if (work.provenance() != Provenance.PUBLISHED) {
            text.append(' ').append(Words.capital(work.provenance().title())).append('.');
        }
        if (!lastChecked().equals(Optional.of(work.verifiedOn()))) {
            text.append(" Last checked ").append(work.verifiedOn()).append('.');
        }
        return text.toString();
    }

    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }
}
