package org.fandown.check;

import java.util.Map;
import java.util.TreeMap;

/** Text forms of the vocabulary: lower case with hyphens. */
final class Names {
    private Names() {}

    /**
     * Checks by text form; apart, because it needs every check while a check needs {@link #kebab}.
     */
    static final class Index {
        static final Map<String, Check> BY_CHECK_ID = index();

        private Index() {}
    }

    static String kebab(Enum<?> constant) {
        StringBuilder text = new StringBuilder();
        String name = constant.name();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            text.append(c == '_' ? '-' : (c >= 'A' && c <= 'Z') ? (char) (c - 'A' + 'a') : c);
        }
        return text.toString();
    }

    private static Map<String, Check> index() {
        Map<String, Check> byId = new TreeMap<>();
        for (Check check : Check.values()) {
            byId.put(check.id(), check);
        }
        return byId;
    }
}
