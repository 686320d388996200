package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the comments of the pages say of types holds, strictly. */
class PageTypesTest {
    private static final Path MODULES =
            TypeCompiler.BROWSER.resolve(Path.of("src/main/resources/org/fandown/browser/site/js"));

    @TempDir private Path folder;

    @Test
    void every_module_keeps_to_its_types() throws Exception {
        List<String> complaints =
                TypeCompiler.complaints(TypeCompiler.CONFIG).stream()
                        .map(it -> it.substring(it.indexOf("/js/") + 4))
                        .toList();
        assertThat(complaints).isEmpty();
    }

    @Test
    void what_keeps_to_the_types_of_pages_and_libraries_is_not_blamed() throws Exception {
        assertThat(complaintsOf("'checks'", "html`<b></b>`")).isEmpty();
    }

    @Test
    void a_wrong_type_is_found_where_it_stands() throws Exception {
        assertThat(complaintsOf("5", "html`<b></b>`"))
                .singleElement()
                .asString()
                .startsWith("page.js(5,5): error TS2345")
                .contains("'number' is not assignable to parameter of type 'string'");
        assertThat(complaintsOf("'checks'", "html(5)"))
                .singleElement()
                .asString()
                .startsWith("page.js(6,19): error TS2345");
    }

    @Test
    void what_has_no_type_is_found() throws Exception {
        assertThat(complaintsOf("'checks'", "(x) => x"))
                .singleElement()
                .asString()
                .contains("TS7006");
    }

    /** What is told of a page that asks the core for a name and draws a thing. */
    private List<String> complaintsOf(String name, String drawn)
            throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("page.js"),
                """
                /** A page. */
                import { html, render } from '/lib/lit-html/lit-html.js';
                import { ask } from '%s';

                ask(%s);
                const made = %s;
                render(made, document.body);
                """
                        .formatted(MODULES.resolve("engine.js"), name, drawn));
        Path config = folder.resolve("tsconfig.json");
        Files.writeString(
                config,
                "{\"extends\": \"%s\", \"include\": [\"page.js\"]}".formatted(TypeCompiler.CONFIG));
        return TypeCompiler.complaints(config);
    }
}
