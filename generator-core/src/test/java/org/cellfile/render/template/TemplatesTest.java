package org.cellfile.render.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.subject.safeguard.Kinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TemplatesTest {

    @Test
    void a_text_is_escaped_and_never_read_as_a_template() {
        Block paragraph = new Block.Paragraph("<b>${1 + 1}</b> &amp; <#if x> \"'");

        assertThat(Templates.fill("blocks/paragraph.ftl", Map.of("block", paragraph)))
                .isEqualTo("<p class=\"text\">&lt;b&gt;${1 + 1}&lt;/b&gt; &amp;amp; &lt;#if x&gt; &quot;&apos;</p>\n");
    }

    @Test
    void a_template_sees_the_components_of_a_record_and_none_of_its_methods() {
        Map<String, Object> data = Map.of("block", new Object());

        assertThatThrownBy(() -> Templates.fill("blocks/paragraph.ftl", data))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the template blocks/paragraph.ftl does not fit its data");
    }

    @Test
    void a_missing_figure_is_told_as_a_defect_of_the_template() {
        Map<String, Object> data = Map.of("data", Map.of("unit", "s", "mean", BigDecimal.ONE));

        assertThatThrownBy(() -> Templates.fill("drawings/stop-runs.svg.ftl", data))
                .isInstanceOf(IllegalStateException.class);
    }

    static Stream<Class<?>> blocks() {
        return Arrays.stream(Block.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void every_sort_of_block_has_a_fragment(Class<? extends Record> block) {
        String path = "/org/cellfile/templates/blocks/" + RecordModel.sort(block) + ".ftl";
        assertThat(getClass().getResource(path)).as(path).isNotNull();
    }

    static List<String> kinds() {
        return Kinds.ids();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void every_kind_has_its_drawing_and_its_words(String kind) throws IOException {
        String folder = "/org/cellfile/templates/kinds/" + kind + "/";
        assertThat(getClass().getResource(folder + "elevation.svg.ftl")).isNotNull();
        Properties words = new Properties();
        try (InputStream stream = getClass().getResourceAsStream(folder + "words_en.properties")) {
            words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        }
        for (String key : List.of("name", "purpose", "shift-check", "never")) {
            assertThat(words.getProperty(key)).as(key).isNotBlank();
        }
    }

    @Test
    void a_language_nobody_has_written_is_refused() {
        assertThatThrownBy(() -> Templates.words("xx"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("xx");
    }
}
