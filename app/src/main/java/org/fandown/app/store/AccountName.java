package org.fandown.app.store;

import java.text.Normalizer;
import java.util.Locale;

/** How names of accounts are written and told apart. */
final class AccountName {
    private static final int LONGEST = 64;

    private AccountName() {}

    /**
     * A name as it is shown: composed, with single spaces.
     *
     * @throws AccountException if it is empty, longer than {@value #LONGEST} signs, or has signs
     *     that cannot be seen
     */
    static String shown(String typed) {
        String name = Normalizer.normalize(typed, Normalizer.Form.NFC).strip();
        boolean unseen = name.codePoints().anyMatch(AccountName::isUnseen);
        if (name.isEmpty() || name.codePointCount(0, name.length()) > LONGEST || unseen) {
            throw new AccountException(
                    "This is no name for an account. Allowed: 1 to "
                            + LONGEST
                            + " letters, digits and other signs that can be seen. Next: take"
                            + " another name.");
        }
        return name.replaceAll(" +", " ");
    }

    /** What is the same of two names that people would take for one another by their case. */
    static String key(String name) {
        return Normalizer.normalize(name.strip(), Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ");
    }

    private static boolean isUnseen(int sign) {
        return switch (Character.getType(sign)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.UNASSIGNED ->
                    true;
            default -> false;
        };
    }
}
