package org.cellfile.audit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cellfile.Audit;
import org.cellfile.audit.Examination.Examined;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.junit.jupiter.api.Test;

/** What is said about files nobody touched, with keys from outside and without. All figures are constructed. */
class AuditTest {

    static final String NAME = "handed-over.pdf";

    static Examined examined(byte[] pdf, TrustedKeys trusted, boolean redraw) {
        return new Audit().of(World.Entry.held(NAME, pdf), trusted, redraw);
    }

    static AuditReport report(byte[] pdf) {
        return examined(pdf, TrustedKeys.none(), false).report();
    }

    static TrustedKeys keys(String text) {
        try {
            return TrustedKeys.read(new SourceFile("keys.pem", text));
        } catch (Refusal refused) {
            throw new AssertionError(refused.finding().sentence(), refused);
        }
    }

    private static SortedMap<String, byte[]> withOpenPoint() {
        SortedMap<String, byte[]> files = new TreeMap<>(ReleasedCell.unsigned());
        files.put(
                "points.yaml",
                ("cellfile: 1\nopen-points:\n  - {tag: lamp, what: A lamp is missing, owner: ilse, since: 2026-11-19,"
                                + " until: 2026-12-19, before-release: yes}\n")
                        .getBytes(UTF_8));
        return files;
    }

    @Test
    void nothingDiffersInARelease_andWithoutKeysItsOriginIsUnproven() {
        AuditReport report = report(ReleasedCell.pdf());
        assertThat(report.differs()).isEmpty();
        assertThat(report.verdict()).isEqualTo("consistent in itself, origin unproven");
        assertThat(report.agrees())
                .hasSize(8)
                .anyMatch(line -> line.startsWith("pages: ") && line.contains("holding every word"))
                .contains("state: printed as a release, and nothing bars one", "metadata: title, author and dates");
        assertThat(report.unsaid())
                .anyMatch(line -> line.contains("`released for use` of the whole file by C. Vell")
                        && line.contains("origin unproven: no keys from outside were given"))
                .anyMatch(line -> line.contains("typed, not proven"))
                .anyMatch(line -> line.startsWith("what no sign-off covers"))
                .anyMatch(line -> line.contains("only `--redraw`"));
        assertThat(report.text()).endsWith("\n\nconsistent in itself, origin unproven\n");
    }

    @Test
    void theSameReleaseDrawnAnewIsTheSameByteForByte() {
        AuditReport report =
                examined(ReleasedCell.pdf(), TrustedKeys.none(), true).report();
        assertThat(report.differs()).isEmpty();
        assertThat(report.agrees())
                .contains("drawn anew: byte for byte what this version makes of the embedded sources");
    }

    @Test
    void keysFromOutsideProveTheOrigin() {
        AuditReport report = examined(ReleasedCell.pdf(), keys(ReleasedCell.trusted("B. Ostrow", "C. Vell")), false)
                .report();
        assertThat(report.differs()).isEmpty();
        assertThat(report.verdict())
                .isEqualTo(
                        "everything that can be said agrees; origin proven by B. Ostrow (checked, 2026-11-19), C. Vell"
                                + " (released for use, 2026-11-20)");
    }

    /** Whoever has a copy can write anything into a chapter whose digest is taken over, and the signatures still hold. */
    @Test
    void signaturesProveNothingOfChaptersWhoseDigestIsTakenOver() {
        SortedMap<String, byte[]> sources = ReleasedCell.unsigned();
        sources.put("copies.yaml", "cellfile: 1\ncopies: {hold: no-internal-parts}\n".getBytes(UTF_8));
        AuditReport report = examined(
                        ReleasedCell.pdf(ReleasedCell.signed(sources)),
                        keys(ReleasedCell.trusted("B. Ostrow", "C. Vell")),
                        false)
                .report();
        assertThat(report.differs()).isEmpty();
        assertThat(report.verdict())
                .isEqualTo(
                        "everything that can be said agrees; origin proven by B. Ostrow (checked, 2026-11-19), C. Vell"
                                + " (released for use, 2026-11-20), but not of what stands in the chapters"
                                + " `identity`, `registers`");
        assertThat(report.unsaid())
                .anyMatch(line ->
                        line.contains("chapters `identity`, `registers`") && line.contains("could be anybody's"));
    }

    @Test
    void aKeyThatIsNotTrustedProvesNothing() {
        AuditReport report = examined(ReleasedCell.pdf(), keys(ReleasedCell.anotherKey()), false)
                .report();
        assertThat(report.differs()).isEmpty();
        assertThat(report.verdict()).isEqualTo("consistent in itself, origin unproven");
        assertThat(report.unsaid()).anyMatch(line -> line.contains("its key is not among the trusted ones"));
    }

    @Test
    void aKeyTrustedUnderAnotherNameIsNobodys() {
        AuditReport report = examined(ReleasedCell.pdf(), keys(ReleasedCell.trusted("C. Vell", "B. Ostrow")), false)
                .report();
        assertThat(report.differs())
                .extracting(finding -> finding.id().words())
                .containsOnly("audit.another-owner")
                .hasSize(2);
        assertThat(report.verdict()).isEqualTo("does not agree");
        assertThat(report.provenBy()).isEmpty();
    }

    @Test
    void nothingDiffersInADraft() {
        AuditReport report = report(ReleasedCell.draft(withOpenPoint()));
        assertThat(report.differs()).isEmpty();
        assertThat(report.agrees())
                .anyMatch(line -> line.matches("state: printed as a draft, and \\d+ things? bars? release"));
        assertThat(report.unsaid()).anyMatch(line -> line.contains("nobody vouches for this state by name"));
    }

    @Test
    void theSourcesComeOutAsTheyWere() {
        assertThat(examined(ReleasedCell.pdf(), TrustedKeys.none(), false).sources())
                .allSatisfy((name, bytes) ->
                        assertThat(bytes).isEqualTo(ReleasedCell.files().get(name)))
                .containsKeys("cell.yaml", "people.yaml", "sign-offs.yaml")
                .doesNotContainKeys("dossier.json", "printed.json");
    }

    @Test
    void theReportHasAFormForOtherPrograms() throws Exception {
        String schema;
        try (InputStream stream = Audit.class.getResourceAsStream("/org/cellfile/audit.schema.json")) {
            schema = new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8);
        }
        for (byte[] pdf : List.of(ReleasedCell.pdf(), "no PDF".getBytes(UTF_8))) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(schema, InputFormat.JSON)
                            .validate(report(pdf).json(), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @Test
    void aFileOfKeysMustSayWhoseTheyAre() {
        for (String wrong : List.of(
                "",
                "B. Ostrow\n",
                ReleasedCell.pem("", "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"),
                ReleasedCell.anotherKey().replace("PUBLIC", "PRIVATE"),
                ReleasedCell.anotherKey().replace("MCow", "MCox"),
                ReleasedCell.anotherKey().replace("-----END PUBLIC KEY-----", "and so on"))) {
            assertThatThrownBy(() -> TrustedKeys.read(new SourceFile("keys.pem", wrong)))
                    .isInstanceOfSatisfying(
                            Refusal.class,
                            refused ->
                                    assertThat(refused.finding().id().words()).isEqualTo("audit.trusted-keys"));
        }
    }
}
