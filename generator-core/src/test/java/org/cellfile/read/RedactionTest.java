package org.cellfile.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Findings;
import org.cellfile.source.SourceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Values are taken out of files whatever the layout, and nothing else changes but comments. All figures are constructed. */
class RedactionTest {

    private static final String MARK = "\"left out of this copy\"";

    /** In each of them {@code secret} is left out, and {@code kept} stays; what is left out is told by "zan". */
    static Stream<String> layouts() {
        return Stream.of(
                "kept: 1\nsecret: zan\nalso-kept: 2\n",
                "secret: zan",
                "\"secret\": \"zan # \tzan\" #\tzan\t\nkept: a#b\n",
                "'secret': 'zan '' zan'   \nkept: 'it''s'\n",
                "secret: \"zan \\\" \\u0041 \\\n   zan\"\nkept: 1\n",
                "secret: zan\n  zan zan\n\n  zan\nkept: 1\n",
                "secret: \"zan\n\n  zan\"   # zan\nkept: 1\n",
                "secret: |\n  zan\n   zan\n\n  # zan is no comment here\n# zan\nkept: 1\n",
                "secret: >-\n  zan\n  zan\n\n\nkept: 1\n",
                "secret: |2+ # zan\n   zan\n\nkept: 1\n",
                "kept: 1\nsecret: >-\n  zan\n",
                "kept: | # zan\n  # no comment\n  %none either\nsecret: zan\n",
                "{kept: 1, secret: zan, also-kept: 2}\n",
                "{\"kept\":1,\"secret\":\"zan\",\"also-kept\":2}\n",
                "{\n  kept: [a, b],   # zan\n  secret: zan\n    zan,\n  also-kept: 'x'\n}\n",
                "{secret: \"zan\n zan\n\", kept: 1}\n",
                "secret: [zan, \"zan\", 'zan'] # zan\nkept: [a, b]\n",
                "secret:\n  - zan\n  - >-\n    zan\n  - 'zan'\nkept: 1\n",
                "secret:\n- zan\n# zan\n- zan\nkept: 1\n",
                "? secret\n: zan\n? kept\n: 1\n",
                "secret: zan\r\nkept: 1 # zan\r\nalso-kept: |\r\n  a\r\n  b\r\n",
                "secret: >\r\n  zan\r\n  zan\r\n\r\nkept: 1\r\n",
                "secret: zan\rkept: 1\r",
                "%YAML 1.1\n%TAG ! tag:zan:\n--- # zan\nsecret: zan\nkept: 1\n... # zan\n",
                "# zan\n\n  # zan\nkept: \uD83D\uDD11 \uD83D\uDD11\nsecret: \uD83D\uDD11 zan \uD83D\uDD11\nalso-kept: ü\n",
                "secret: https://zan.example/#zan\nkept: http://a/#b\n",
                "secret: zan: zan\n".replace(": zan: zan", ": \"zan: zan\"") + "kept: \"a: b # c\"\n",
                "\n\n\nsecret:      zan     \n\n\nkept:\n",
                "kept: \"# no comment\"\nsecret: \"{zan\"\n");
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void isLeftOut(String text) {
        SourceFile before = new SourceFile("a.yaml", text);
        SourceFile after = Redaction.of(before, statement -> statement.key().equals("secret"));

        assertThat(after.text()).doesNotContain("zan").contains(MARK);
        assertThat(after.lines()).hasSameSizeAs(before.lines());
        assertThat(statements(after, "secret"))
                .extracting(Statement::value)
                .isEqualTo(statements(before, "secret").stream()
                        .map(one -> one.value().startsWith("[") ? "[" + marks(one) + "]" : MARK)
                        .toList());
        assertThat(statements(after, "kept")).isEqualTo(statements(before, "kept"));
        assertThat(statements(after, "also-kept"))
                .extracting(Statement::value)
                .isEqualTo(statements(before, "also-kept").stream()
                        .map(Statement::value)
                        .toList());
    }

    private static String marks(Statement list) {
        return String.join(
                ",", List.of(list.value().split(",")).stream().map(any -> MARK).toList());
    }

    /** Without the positions where something before them in their line was left out. */
    private static List<Statement> statements(SourceFile file, String key) {
        Findings findings = new Findings();
        Node.Mapping top = YamlFile.read(file, findings).orElseThrow();
        assertThat(findings.sorted()).isEmpty();
        assertThat(top.pairs().stream().map(pair -> pair.key().text()))
                .isSubsetOf(Set.of("secret", "kept", "also-kept"))
                .contains("secret");
        return Statements.of(top.pairs()).stream()
                .filter(one -> one.key().equals(key))
                .map(one -> new Statement(one.path(), one.value(), one.at().replaceFirst(":\\d+$", "")))
                .toList();
    }

    @Test
    void aFileOfWhichNothingIsLeftOutKeepsAllButItsComments() {
        String text = "# a\na: 'b'   # c\n\nd:\n  - e\n  - {f: \"g\", h: >-\n      i}\n"
                        .replace("{f: \"g\", h: >-\n      i}", "|\n    j # k\n")
                + "l: m # n";

        assertThat(Redaction.of(new SourceFile("a.yaml", text), any -> false).text())
                .isEqualTo("\na: 'b'\n\nd:\n  - e\n  - |\n    j # k\n\nl: m");
    }

    @Test
    void theLengthOfAValueIsNotTold() {
        assertThat(leftOut("a: x, y\n")).isEqualTo(leftOut("a: somewhat longer than that\n"));
    }

    private static String leftOut(String text) {
        return Redaction.of(new SourceFile("a.yaml", text), any -> true).text();
    }

    @Test
    void theLastLineNeedsNoEnd() {
        assertThat(leftOut("a: >-\n  x\n  y")).isEqualTo("a: " + MARK + "\n\n");
    }

    @Test
    void whatCannotBeReadHasNoValuesToLeaveOut() {
        assertThatThrownBy(() -> leftOut("a: [\n")).hasMessage("a.yaml cannot be read");
    }
}
