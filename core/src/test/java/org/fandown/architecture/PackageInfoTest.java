package org.fandown.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import java.util.List;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

class PackageInfoTest {
    @Test
    void every_package_of_the_core_has_a_package_info_marked_for_null() {
        assertThat(packagesWithoutMark(CoreClasses.main())).isEmpty();
    }

    @Test
    void package_without_package_info_is_seen() {
        assertThat(packagesWithoutMark(CoreClasses.bad("garage")))
                .containsExactly(CoreClasses.BAD_ROOT + ".garage");
    }

    private static List<String> packagesWithoutMark(JavaClasses classes) {
        return classes.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(item -> !item.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .sorted()
                .toList();
    }
}
