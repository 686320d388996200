package org.fandown.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which package of the core may use which. What is not in the table is not allowed.
 *
 * <p>Three arrows must never be added. From air to rulebook: physics does not bend to law. From
 * judgement to air, practice or procedure: the judge weighs evidence, not intentions. From anything
 * here to a program that uses the core.
 */
final class ArrowTable {
    /** Each package of the core, and the packages it may use. */
    static final String CORE =
            """
            units     :
            check     : units
            document  : units
            vehicle   : units document
            rulebook  : units document check vehicle
            air       : units vehicle
            braking   : units vehicle
            evidence  : units document check vehicle
            trace     : units document check evidence
            judgement : units check vehicle rulebook evidence
            plot      : units
            procedure : units document check vehicle rulebook
            practice  : units document check vehicle air braking evidence
            operator  : units check vehicle rulebook evidence judgement procedure practice
            referee   : units document check vehicle rulebook braking evidence trace judgement \
            procedure practice
            record    : units document check vehicle rulebook braking evidence judgement
            """;

    private final Map<String, Set<String>> allowed;

    private ArrowTable(Map<String, Set<String>> allowed) {
        this.allowed = allowed;
    }

    /** Reads a table: one package per line, a colon, and the packages it may use. */
    static ArrowTable of(String text) {
        Map<String, Set<String>> allowed = new TreeMap<>();
        for (String line : text.split("\n", -1)) {
            List<String> words = List.of(line.replace(":", " ").strip().split("\\s+", -1));
            if (!words.get(0).isEmpty()) {
                allowed.put(words.get(0), new TreeSet<>(words.subList(1, words.size())));
            }
        }
        return new ArrowTable(allowed);
    }

    Set<String> packages() {
        return allowed.keySet();
    }

    Set<String> usableBy(String name) {
        return allowed.getOrDefault(name, Set.of());
    }

    /** Returns the rule that the packages below this root keep to the table. */
    ArchRule rule(String root) {
        return ArchRuleDefinition.classes()
                .should(keepToTheTable(root))
                .because("the table in ArrowTable says which package may use which")
                .allowEmptyShould(true);
    }

    private ArchCondition<JavaClass> keepToTheTable(String root) {
        return new ArchCondition<>("keep to the table") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                String from = below(root, item);
                if (!allowed.containsKey(from)) {
                    String text = item.getName() + " is in a package that is not in the table";
                    events.add(SimpleConditionEvent.violated(item, text));
                }
                for (Dependency arrow : item.getDirectDependenciesFromSelf()) {
                    JavaClass target = arrow.getTargetClass().getBaseComponentType();
                    if (target.getPackageName().startsWith(root) && !mayUse(root, from, target)) {
                        String text = "arrow not in the table: " + arrow.getDescription();
                        events.add(SimpleConditionEvent.violated(arrow, text));
                    }
                }
            }
        };
    }

    private boolean mayUse(String root, String from, JavaClass target) {
        String to = below(root, target);
        return to.equals(from) || usableBy(from).contains(to);
    }

    /** Returns the first part of the package name below the root, or an empty text in the root. */
    private static String below(String root, JavaClass item) {
        String name = item.getPackageName();
        if (!name.startsWith(root + ".")) {
            return "";
        }
        String rest = name.substring(root.length() + 1);
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }
}
