package org.fandown.reference;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import java.util.ArrayList;
import java.util.List;
import org.junit.platform.commons.annotation.Testable;

/** Finds reference tests that do not name their source. */
public final class SourcedTests {
    private SourcedTests() {}

    /** Returns one line for each test without a source, or with a blank or undated one. */
    public static List<String> problems(JavaClasses classes) {
        List<String> problems = new ArrayList<>();
        for (JavaClass item : classes) {
            for (JavaMethod method : item.getMethods()) {
                if (method.isMetaAnnotatedWith(Testable.class)) {
                    String problem = problemOf(method);
                    if (!problem.isEmpty()) {
                        problems.add(method.getName() + ": " + problem);
                    }
                }
            }
        }
        return problems;
    }

    private static String problemOf(JavaMethod method) {
        if (!method.isAnnotatedWith(Source.class)) {
            return "no @Source";
        }
        Source source = method.getAnnotationOfType(Source.class);
        if (source.work().isBlank() || source.edition().isBlank() || source.where().isBlank()) {
            return "a part of @Source is blank";
        }
        return source.accessed().matches("20[0-9]{2}-[01][0-9]-[0-3][0-9]")
                ? ""
                : "accessed is not a date such as 2026-11-25";
    }
}
