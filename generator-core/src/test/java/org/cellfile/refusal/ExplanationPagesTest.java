package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cellfile.Explanation;
import org.cellfile.Generator;
import org.cellfile.finding.FindingId;
import org.junit.jupiter.api.Test;

/** Every sort of finding has a page, and no page is left over. */
class ExplanationPagesTest {

    @Test
    void everyFindingIsExplained() throws Exception {
        Set<String> ids = ids();
        assertThat(ids).hasSizeGreaterThanOrEqualTo(35);
        for (String id : ids) {
            assertThat(Explanation.ofFinding(id)).as("the page about " + id).hasValueSatisfying(page -> {
                assertThat(page.lines()).startsWith("# " + id).hasSizeBetween(8, 20);
                assertThat(page).contains("```", "**Why it ", "**What to do.**");
            });
        }
    }

    @Test
    void noPageIsLeftOver() throws Exception {
        try (Stream<Path> pages = Files.list(classes().resolve("org/cellfile/explain"))) {
            assertThat(pages.map(page -> page.getFileName().toString()).map(name -> name.replaceFirst("\\.md$", "")))
                    .containsExactlyInAnyOrderElementsOf(ids());
        }
    }

    @Test
    void everyCaseIsFiledUnderAFindingThatExists() throws Exception {
        assertThat(RefusalTest.cases().stream().map(path -> path.getName(0).toString()))
                .isSubsetOf(ids());
    }

    private static Path classes() throws Exception {
        return Path.of(Generator.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
    }

    /** The constants in all classes of the program, those nobody made public as well. */
    private static Set<String> ids() throws Exception {
        Path root = classes();
        List<Path> files;
        try (Stream<Path> walk = Files.walk(root.resolve("org/cellfile"))) {
            files = walk.filter(file -> file.toString().endsWith(".class")).toList();
        }
        Set<String> ids = new TreeSet<>();
        for (Path file : files) {
            String name = root.relativize(file)
                    .toString()
                    .replaceFirst("\\.class$", "")
                    .replaceAll("[/\\\\]", ".");
            if (name.endsWith("package-info")) {
                continue;
            }
            for (Field field : Class.forName(name).getDeclaredFields()) {
                if (field.getType() == FindingId.class && Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    ids.add(((FindingId) field.get(null)).words());
                }
            }
        }
        return ids;
    }
}
