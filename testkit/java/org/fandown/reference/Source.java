package org.fandown.reference;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Where the expected values of a reference test come from.
 *
 * <p>A test with a table also has a column that says where in the work each row stands.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Source {
    /** Returns the title of the work, and its publisher where the title alone is not clear. */
    String work();

    /** Returns the edition, or the date of the text. */
    String edition();

    /** Returns the section, table, page or example in the work. */
    String where();

    /** Returns what sort of work it is. */
    Kind kind();

    /** Returns the date on which the work was looked at, as {@code 2026-11-25}. */
    String accessed();

    /** Returns what else a reader should know, such as a value read at second hand. */
    String note() default "";

    /** The sorts of outside truth. */
    enum Kind {
        /** A standard of a standards body. */
        STANDARD,
        /** A law or a regulation. */
        REGULATION,
        /** A handbook or manual for drivers, inspectors or mechanics. */
        HANDBOOK,
        /** A scientific or technical paper. */
        PAPER,
        /** Other publication of a public agency. */
        AGENCY,
        /** A measurement of a real vehicle or part. */
        MEASUREMENT,
        /** The result of another, independent program. */
        OTHER_PROGRAM,
        /** A solution in closed form, derived in the test. */
        CLOSED_FORM
    }
}
