package org.fandown.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The operator knows what a person can see, hear and measure, and nothing else. */
class OperatorEyesTest {
    private static final Set<String> HIDDEN =
            Set.of(
                    "PracticeTruck.air",
                    "PracticeTruck.events",
                    "PracticeTruck.fingerprint",
                    "Scenario.faults",
                    "Scenario.parts",
                    "Scenario.told");

    @Test
    void operator_looks_neither_into_the_air_system_nor_at_the_faults() {
        assertThat(CoreClasses.main().stream().anyMatch(c -> isIn(c.getPackageName(), "operator")))
                .isTrue();
        peeking("operator").check(CoreClasses.main());
    }

    @Test
    void somebody_who_looks_there_is_seen() {
        JavaClasses all = CoreClasses.main();
        assertThat(peeking("practice").evaluate(all).getFailureReport().getDetails())
                .anySatisfy(text -> assertThat(text).contains("Scenario.faults()"))
                .anySatisfy(text -> assertThat(text).contains("PracticeTruck.air()"));
    }

    private static ArchRule peeking(String name) {
        return ArchRuleDefinition.noClasses()
                .that()
                .resideInAPackage(CoreClasses.ROOT + "." + name)
                .should()
                .accessTargetWhere(
                        new DescribedPredicate<JavaAccess<?>>("is hidden from a person") {
                            @Override
                            public boolean test(JavaAccess<?> access) {
                                String called =
                                        access.getTargetOwner().getSimpleName()
                                                + "."
                                                + access.getTarget().getName();
                                return HIDDEN.contains(called)
                                        || isIn(access.getTargetOwner().getPackageName(), "air");
                            }
                        });
    }

    private static boolean isIn(String packageName, String name) {
        return packageName.equals(CoreClasses.ROOT + "." + name);
    }
}
