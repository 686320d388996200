package org.fandown.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;

/** The classes that the architecture tests look at. */
final class CoreClasses {
    static final String ROOT = "org.fandown";

    /** Classes that break the rules on purpose. */
    static final String BAD_ROOT = "org.fandown.architecture.bad";

    private CoreClasses() {}

    /** Returns the classes of the core without its tests. */
    static JavaClasses main() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(ROOT);
    }

    /** Returns the tests whose expected values come from outside. */
    static JavaClasses referenceTests() {
        return new ClassFileImporter().importPackages(ROOT + ".reference");
    }

    /**
     * Returns the classes that break the rules on purpose, from these packages below the bad root.
     */
    static JavaClasses bad(String... packages) {
        List<String> names = Stream.of(packages).map(name -> BAD_ROOT + "." + name).toList();
        return new ClassFileImporter().importPackages(names);
    }
}
