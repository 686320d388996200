package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Component;
import org.fandown.evidence.PartReading;
import org.fandown.evidence.PartReading.Found;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;

/** Judges the walk-round: which parts were looked at, and conditions the place has a rule for. */
final class PartsJudge {
    private PartsJudge() {}

    static Optional<Finding> walkRound(Case before, Ruling ruling) {
        List<Component> missing = new ArrayList<>();
        for (Component part : ((Limit.LookAt) ruling.limit()).parts()) {
            boolean seen =
                    before.inspection().allOtherPartsSeen()
                            || before.inspection().parts().containsKey(part);
            if (!seen) {
                missing.add(part);
            }
        }
        if (missing.isEmpty()) {
            return Optional.of(
                    Finding.of(
                            ruling,
                            Status.MET,
                            Why.of(() -> "Each part on the list was looked at.")));
        }
        if (missing.size() == ((Limit.LookAt) ruling.limit()).parts().size()) {
            return ReadingJudge.notChecked(ruling);
        }
        return Optional.of(
                Finding.of(
                        ruling,
                        Status.NOT_CHECKED,
                        Why.of(
                                () -> "Not looked at: " + titles(missing) + ".",
                                () -> "Look at them and note them under parts.")));
    }

    private static String titles(List<Component> parts) {
        StringBuilder text = new StringBuilder();
        for (Component part : parts) {
            text.append(text.length() == 0 ? "" : ", ").append(part.title());
        }
        return text.toString();
    }

    static Optional<Finding> condition(Case before, Ruling ruling) {
        Limit.Absent absent = (Limit.Absent) ruling.limit();
        PartReading reading = before.inspection().parts().get(absent.on());
        if (reading == null) {
            return before.inspection().allOtherPartsSeen()
                    ? Optional.of(clear(ruling, absent))
                    : ReadingJudge.notChecked(ruling);
        }
        for (Found found : reading.found()) {
            if (found.condition().equals(absent.condition())) {
                return Optional.of(present(ruling, absent, found));
            }
        }
        return Optional.of(clear(ruling, absent));
    }

    private static Finding clear(Ruling ruling, Limit.Absent absent) {
        return Finding.of(
                ruling,
                Status.MET,
                Why.of(() -> absent.on().title() + " looked at: " + absent + "."));
    }

    private static Finding present(Ruling ruling, Limit.Absent absent, Found found) {
        return Finding.of(
                ruling,
                Status.NOT_MET,
                Why.of(
                        () ->
                                absent.on().title()
                                        + ": "
                                        + found.condition().replace('-', ' ')
                                        + (found.note().isEmpty() ? "" : " (" + found.note() + ")")
                                        + "."
                                        + Demanded.sentence(ruling.rule().words())));
    }
}
