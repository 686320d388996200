package org.fandown.vehicle;

import org.fandown.document.Names;

/** The words for the enumerations of this package, as a vehicle file has them. */
final class Labels {
    private Labels() {}

    static String of(Enum<?> value) {
        return Names.kebab(value);
    }
}
