package org.fandown.vehicle;

/** The words for the enumerations of this package, as a vehicle file has them. */
final class Labels {
    private Labels() {}

    static String of(Enum<?> value) {
        StringBuilder word = new StringBuilder();
        for (char letter : value.name().toCharArray()) {
            boolean capital = letter >= 'A' && letter <= 'Z';
            word.append(letter == '_' ? '-' : capital ? (char) (letter - 'A' + 'a') : letter);
        }
        return word.toString();
    }
}
