package org.fandown.architecture.bad.reference;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference tests that do not say enough; abstract, so that no engine runs them. */
public abstract class UnsourcedCases {
    @Test
    void unsourced() {}

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void unsourced_table(int value) {}

    @Property
    void unsourced_property(@ForAll int value) {}

    @Test
    @Source(
            work = " ",
            edition = "1",
            where = "table 1",
            kind = Source.Kind.STANDARD,
            accessed = "2026-11-25")
    void blank() {}

    @Test
    @Source(
            work = "An invented work",
            edition = "1",
            where = "table 1",
            kind = Source.Kind.STANDARD,
            accessed = "yesterday")
    void undated() {}

    @Test
    @Source(
            work = "An invented work",
            edition = "1",
            where = "table 1",
            kind = Source.Kind.STANDARD,
            accessed = "2026-11-25")
    void sourced() {}
}
