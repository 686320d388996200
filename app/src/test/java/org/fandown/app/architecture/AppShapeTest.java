package org.fandown.app.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import org.fandown.reference.SourcedTests;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

class AppShapeTest {
    private static final String ROOT = "org.fandown.app";
    private static final String BAD_ROOT = "org.fandown.app.architecture.bad";

    @Test
    void each_library_is_used_in_one_package_only() {
        Libraries.stayInTheirHomes(ROOT).check(main());
    }

    @Test
    void library_out_of_its_home_is_seen() {
        assertThat(violations(Libraries.stayInTheirHomes(BAD_ROOT)))
                .anySatisfy(text -> assertThat(text).contains("files", "picocli"))
                .anySatisfy(text -> assertThat(text).contains("cli", "org.snakeyaml"))
                .anySatisfy(text -> assertThat(text).contains("files", "org.apache.pdfbox"))
                .noneSatisfy(text -> assertThat(text).contains("bad.paper"));
    }

    @Test
    void core_never_uses_the_program_around_it() {
        JavaClasses core =
                new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .withImportOption(location -> !location.contains("/org/fandown/app/"))
                        .importPackages("org.fandown");
        assertThat(core).isNotEmpty();
        neverUsesTheProgram().check(core);
    }

    @Test
    void use_of_the_program_by_a_lower_layer_is_seen() {
        assertThat(violations(neverUsesTheProgram()))
                .anySatisfy(text -> assertThat(text).contains("Reader", "ExitCode"));
    }

    @Test
    void every_package_has_a_package_info_marked_for_null() {
        assertThat(packagesWithoutMark(main())).isEmpty();
        assertThat(packagesWithoutMark(bad())).contains(BAD_ROOT + ".files");
    }

    @Test
    void every_reference_test_names_its_source() {
        JavaClasses tests = new ClassFileImporter().importPackages("org.fandown.reference");
        assertThat(tests).isNotEmpty();
        assertThat(SourcedTests.problems(tests)).isEmpty();
    }

    private static ArchRule neverUsesTheProgram() {
        return ArchRuleDefinition.noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ROOT, ROOT + ".cli..", ROOT + ".files..", ROOT + ".paper..");
    }

    private static List<String> packagesWithoutMark(JavaClasses classes) {
        return classes.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(item -> !item.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .toList();
    }

    private static JavaClasses main() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(ROOT);
    }

    private static JavaClasses bad() {
        return new ClassFileImporter().importPackages(BAD_ROOT);
    }

    private static List<String> violations(ArchRule rule) {
        return rule.evaluate(bad()).getFailureReport().getDetails();
    }
}
