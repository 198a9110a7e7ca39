package org.cellfile.refusal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.cellfile.Generator;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingReport;
import org.cellfile.finding.Severity;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Findings for other programs keep to their published form, for everything that is refused. */
class ReportFormTest {

    private static final Schema SCHEMA = schema();

    @TempDir
    private Path folder;

    private static Schema schema() {
        try (InputStream stream = Generator.class.getResourceAsStream("/org/cellfile/findings.schema.json")) {
            String text = new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
    }

    static List<Path> cases() throws IOException {
        return RefusalTest.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void keepsToItsForm(Path path) throws Exception {
        assertForms(BaseCell.check(BaseCell.overlay(BaseCell.REFUSALS.resolve(path), folder)));
    }

    @Test
    void nothingFoundHasAForm() throws Exception {
        Verdict verdict = BaseCell.check(BaseCell.copyTo(folder));
        assertForms(verdict);
        assertThat(suite(verdict).getAttribute("tests")).isEqualTo("1");
    }

    @Test
    void textThatXmlHasNoPlaceForIsReplaced() throws Exception {
        BaseCell.copyTo(folder);
        Files.writeString(
                folder.resolve("more.yaml"), "cellfile: 1\n\"a\\0b]]>&<\uFFFE\uD83E\uDD16\": <![CDATA[ & ]]>\n");
        Verdict verdict = BaseCell.check(folder);
        assertForms(verdict);
        assertThat(suite(verdict).getTextContent()).contains("]]>&<");
    }

    @Test
    void theFormRefusesWhatDoesNotBelong() {
        assertThat(SCHEMA.validate("{\"format\": 1, \"verdict\": \"refused\", \"findings\": []}", InputFormat.JSON))
                .isNotEmpty();
        assertThat(SCHEMA.validate("{\"format\": 1, \"verdict\": \"fine\", \"findings\": []}", InputFormat.JSON))
                .isNotEmpty();
        assertThat(SCHEMA.validate("{\"format\": 1, \"verdict\": \"draft\", \"findings\": [{}]}", InputFormat.JSON))
                .isNotEmpty();
    }

    private static void assertForms(Verdict verdict) throws Exception {
        List<Finding> findings = verdict.findings();
        assertThat(SCHEMA.validate(FindingReport.json(verdict.word(), findings), InputFormat.JSON))
                .isEmpty();

        Element suite = suite(verdict);
        long refusing = findings.stream()
                .filter(finding -> finding.severity() == Severity.REFUSES)
                .count();
        assertThat(suite.getTagName()).isEqualTo("testsuite");
        assertThat(suite.getAttribute("tests")).isEqualTo(String.valueOf(Math.max(1, findings.size())));
        assertThat(suite.getElementsByTagName("testcase").getLength()).isEqualTo(Math.max(1, findings.size()));
        assertThat(suite.getAttribute("failures")).isEqualTo(String.valueOf(refusing));
        assertThat(suite.getElementsByTagName("failure").getLength()).isEqualTo((int) refusing);
        assertThat(suite.getAttribute("errors")).isEqualTo("0");
    }

    private static Element suite(Verdict verdict) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(FindingReport.junit(verdict.findings()))))
                .getDocumentElement();
    }
}
