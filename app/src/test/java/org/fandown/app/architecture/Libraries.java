package org.fandown.app.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;

/** Which package may use which library: each library is known to one package only. */
final class Libraries {
    private static final List<Home> HOMES =
            List.of(
                    new Home("picocli", "cli"),
                    new Home("io.javalin", "web"),
                    new Home("org.eclipse.jetty", "web"),
                    new Home("org.jdbi", "store"),
                    new Home("org.flywaydb", "store"),
                    new Home("org.sqlite", "store"),
                    new Home("org.postgresql", "store"),
                    new Home("com.zaxxer.hikari", "store"),
                    new Home("org.snakeyaml", "files"),
                    new Home("org.bouncycastle", "keys"),
                    new Home("com.openhtmltopdf", "paper"),
                    new Home("org.apache.pdfbox", "paper"),
                    new Home("org.apache.fontbox", "paper"),
                    new Home("org.apache.xmpbox", "paper"),
                    new Home("com.google.zxing", "paper"));

    /** What everybody may use: the Java library, our own code, and the marks for null. */
    private static final List<String> COMMON =
            List.of(
                    "java.",
                    "javax.",
                    "org.w3c.dom.",
                    "org.xml.sax.",
                    "org.fandown.",
                    "org.jspecify.");

    private record Home(String library, String name) {}

    private Libraries() {}

    /** Returns the rule that, below this root, each library stays in its one package. */
    static ArchRule stayInTheirHomes(String root) {
        return ArchRuleDefinition.classes()
                .should(useOnlyLibrariesOf(root))
                .because("each library is known to one package, see Libraries")
                .allowEmptyShould(true);
    }

    private static ArchCondition<JavaClass> useOnlyLibrariesOf(String root) {
        return new ArchCondition<>("use only the libraries at home in its package") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                for (Dependency arrow : item.getDirectDependenciesFromSelf()) {
                    JavaClass target = arrow.getTargetClass().getBaseComponentType();
                    if (!mayUse(root, item.getPackageName(), target)) {
                        String text = "library out of its home: " + arrow.getDescription();
                        events.add(SimpleConditionEvent.violated(arrow, text));
                    }
                }
            }
        };
    }

    private static boolean mayUse(String root, String user, JavaClass target) {
        String used = target.getPackageName() + ".";
        return target.isPrimitive()
                || COMMON.stream().anyMatch(used::startsWith)
                || HOMES.stream()
                        .filter(home -> used.startsWith(home.library() + "."))
                        .anyMatch(home -> isIn(root + "." + home.name(), user));
    }

    private static boolean isIn(String home, String name) {
        return (name + ".").startsWith(home + ".");
    }
}
