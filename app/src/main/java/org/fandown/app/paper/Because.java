package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Shortens what decided a verdict: what holds of several wheels is said once. */
final class Because {
    private static final Pattern AT_END = Pattern.compile("(.*) at (\\d+[LR])");
    private static final Pattern IN_MIDDLE = Pattern.compile("(.*) \\((\\d+[LR])\\)(: .*)");
    private static final String MAJOR = "Major defect: ";

    private Because() {}

    /** The reasons, each once, in their order. */
    static List<String> grouped(List<String> because) {
        Map<String, List<String>> wheels = new LinkedHashMap<>();
        for (String reason : because) {
            Matcher end = AT_END.matcher(reason);
            Matcher middle = IN_MIDDLE.matcher(reason);
            if (end.matches()) {
                add(wheels, end.group(1) + " at \0", end.group(2));
            } else if (middle.matches()) {
                add(wheels, middle.group(1) + " (\0)" + middle.group(3), middle.group(2));
            } else {
                wheels.putIfAbsent(reason, new ArrayList<>());
            }
        }
        List<String> texts = new ArrayList<>();
        wheels.forEach((text, at) -> texts.add(text.replace("\0", String.join(", ", at))));
        return texts;
    }

    private static void add(Map<String, List<String>> wheels, String text, String wheel) {
        wheels.computeIfAbsent(text, t -> new ArrayList<>()).add(wheel);
    }

    /** The reasons as one text, the most important first; a long list is cut and says so. */
    static String text(List<String> because, int most) {
        List<String> reasons = grouped(because);
        int shown = reasons.size() > most + 1 ? most : reasons.size();
        boolean allMajor =
                reasons.size() > 1 && reasons.stream().allMatch(r -> r.startsWith(MAJOR));
        StringBuilder text = new StringBuilder(allMajor ? "Major defects: " : "");
        for (int i = 0; i < shown; i++) {
            String reason = allMajor ? reasons.get(i).substring(MAJOR.length()) : reasons.get(i);
            text.append(i == 0 ? "" : " \u00b7 ").append(Clean.entry(Words.withoutStop(reason)));
        }
        if (shown < reasons.size()) {
            text.append(" \u00b7 and ").append(reasons.size() - shown).append(" more, see below");
        }
        return text.append('.').toString();
    }
}
