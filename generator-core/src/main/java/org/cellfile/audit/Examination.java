package org.cellfile.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.MadeBy;
import org.cellfile.dossier.Printed;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.render.Attachment;
import org.cellfile.render.layout.Markup;
import org.cellfile.render.pdf.Embedded;
import org.cellfile.render.pdf.Identifier;
import org.cellfile.source.World;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Printable;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;

/** Every check of a PDF that somebody handed over, one after the other. */
public final class Examination {

    static final FindingId NOT_OURS = new FindingId("audit.not-ours");
    static final FindingId IDENTIFIER = new FindingId("audit.identifier");
    static final FindingId SOURCES = new FindingId("audit.sources");
    static final FindingId STATE = new FindingId("audit.state");
    static final FindingId PAGE = new FindingId("audit.page-text");

    /** The attachment that holds the dossier. */
    public static final String DOSSIER = "dossier.json";

    /** The attachment that says how it was printed. */
    public static final String PRINTED = "printed.json";

    private static final Set<String> OURS = Set.of(DOSSIER, PRINTED);
    private static final String LEDGER = "ledger.";

    private final Recomputation recomputation;
    private final TrustedKeys trusted;
    private final boolean redraw;
    private final Tally tally = new Tally();
    private final SortedMap<String, byte[]> sources = new TreeMap<>();

    private Examination(Recomputation recomputation, TrustedKeys trusted, boolean redraw) {
        this.recomputation = recomputation;
        this.trusted = trusted;
        this.redraw = redraw;
    }

    /**
     * What came of it.
     *
     * @param sources the embedded sources by their paths; empty when the file is not ours
     */
    public record Examined(AuditReport report, SortedMap<String, byte[]> sources) {}

    /**
     * Examines a file.
     *
     * @param trusted keys that came on another way
     * @param redraw true when every page is to be laid out anew and compared byte for byte
     */
    public static Examined of(World.Entry file, TrustedKeys trusted, boolean redraw, Recomputation recomputation) {
        Examination examination = new Examination(recomputation, trusted, redraw);
        try {
            examination.run(file);
        } catch (Refusal refusal) {
            examination.tally.differs(refusal.finding());
        } catch (IOException failed) {
            examination.tally.differs(Refusal.finding(
                    ReceivedPdf.UNREADABLE,
                    file.path(),
                    "the file could not be read: " + failed.getMessage(),
                    "see whether it can be opened by the account this runs under"));
        }
        return new Examined(examination.tally.report(file.path()), examination.sources);
    }

    private void run(World.Entry file) throws IOException, Refusal {
        byte[] bytes = ReceivedPdf.bytes(file);
        Identifier.Worth identifier = Identifier.of(bytes);
        if (identifier == Identifier.Worth.DIFFERS) {
            identifier(file.path(), "its identifier is not that of its bytes");
        }
        try (ReceivedPdf pdf = ReceivedPdf.open(file.path(), bytes)) {
            Optional<Embedded> dossier = pdf.file(DOSSIER);
            Optional<Embedded> printed = pdf.file(PRINTED);
            if (dossier.isEmpty() || printed.isEmpty()) {
                tally.differ(pdf.foreign(), "parts of this sort");
                throw Refusal.of(
                        NOT_OURS,
                        file.path(),
                        "the file is none that this program made: it holds no `"
                                + (dossier.isEmpty() ? DOSSIER : PRINTED) + "`",
                        "name a safety file; posted sheets and forms hold no sources, and a file that was printed or saved anew"
                                + " by another program has lost them");
            }
            if (identifier == Identifier.Worth.HOLDS) {
                tally.agrees("identifier: that of all its bytes, so that none was changed unless it was written anew");
            } else if (identifier == Identifier.Worth.NONE) {
                identifier(file.path(), "it has no identifier as this program writes it, or more than one");
            }
            pdf.files().stream()
                    .filter(one -> !OURS.contains(one.name()))
                    .forEach(one -> sources.put(one.name(), one.content()));
            look(pdf, text(dossier.get()), text(printed.get()));
        }
    }

    private void identifier(String file, String because) {
        tally.differs(Refusal.finding(
                        IDENTIFIER,
                        file,
                        "the file was changed after it was finished",
                        "ask whoever handed it over for the file as it was made")
                .because(List.of(because)));
    }

    private static String text(Embedded file) {
        return new String(file.content(), StandardCharsets.UTF_8);
    }

    /** Reads the pages while the sources are recomputed. */
    private void look(ReceivedPdf pdf, String dossier, String printed) throws Refusal {
        CompletableFuture<Pages> reading = CompletableFuture.supplyAsync(() -> {
            try {
                return new Pages(pdf.texts(), Optional.empty());
            } catch (Refusal refusal) {
                return new Pages(List.of(), Optional.of(refusal.finding()));
            }
        });
        Recomputation.Outcome outcome;
        Optional<Prints> prints;
        try {
            outcome = ReceivedPdf.guarded(pdf.name(), () -> recomputation.recompute(new Sources()));
            prints = recomputed(pdf, outcome, dossier, printed);
        } finally {
            reading.join(); // before the file is closed
        }
        Pages pages = reading.join();
        tally.differ(pdf.foreign(), "parts that this program never writes");
        pages.refused().ifPresent(tally::differs);
        if (prints.isPresent() && pages.refused().isEmpty()) {
            pages(pdf, pages.texts(), prints.get());
        }
        outcome.cell().ifPresent(cell -> new SignOffAudit(cell, trusted, tally).run());
        if (prints.isPresent() && redraw) {
            Optional<byte[]> again =
                    recomputation.draw(prints.get().cell(), prints.get().printable());
            if (again.isPresent()) {
                Redrawing.run(pdf, again.get(), tally);
            } else {
                tally.cannotSay("how the pages look: this version cannot lay them out");
            }
        } else {
            tally.cannotSay(
                    "how the pages look (drawings, typefaces, what stands where) and what is read aloud: only `--redraw`"
                            + " tells");
        }
        outcome.cell().ifPresent(this::notHere);
    }

    private record Pages(List<PageText> texts, Optional<Finding> refused) {}

    /**
     * What the sources give, when they can be printed in the state the file says.
     *
     * @param otherVersion true when a difference may be due to another version
     */
    private record Prints(Cell cell, Printable printable, Markup markup, boolean otherVersion) {}

    private Optional<Prints> recomputed(
            ReceivedPdf pdf, Recomputation.Outcome outcome, String dossier, String printed) {
        if (outcome.verdict() instanceof Refused refused) {
            tally.differs(
                    Refusal.finding(
                            SOURCES,
                            pdf.name(),
                            "the embedded sources are refused when they are recomputed, so that no safety file can be printed from them",
                            "the findings on the sources tell why; ask whoever handed the file over for the file as it was made"));
            tally.differ(refused.refusing(), "findings that refuse");
            tally.cannotSay(
                    "pages: nothing is printed from sources that are refused, so that there is nothing to hold them"
                            + " against");
        } else {
            tally.agrees("sources: " + sources.size() + " files, recomputed; nothing refuses");
        }
        ledger(outcome);
        if (outcome.cell().isEmpty()) {
            return Optional.empty();
        }
        Cell cell = outcome.cell().get();
        Dossier due =
                outcome.verdict() instanceof Printable printable ? printable.dossier() : Composition.compose(cell);
        boolean otherVersion = dossier(pdf, dossier, due);
        return outcome.verdict() instanceof Printable printable
                ? printed(pdf, cell, printable, printed, otherVersion)
                : Optional.empty();
    }

    /** The ledger of derived values is held against the recomputation wherever sources are; here it is only said. */
    private void ledger(Recomputation.Outcome outcome) {
        if (outcome.verdict().findings().stream()
                .noneMatch(finding -> finding.id().words().startsWith(LEDGER))) {
            if (sources.keySet().stream().anyMatch(name -> name.endsWith("derived.yaml"))) {
                tally.agrees("ledger: every derived value as it was entered");
            } else {
                tally.cannotSay(
                        "ledger: the sources hold none, so that a number that was always wrong is not told from one that"
                                + " was changed");
            }
        }
    }

    /** Holds the dossiers against each other; true when the embedded one was made by another version. */
    private boolean dossier(ReceivedPdf pdf, String embedded, Dossier due) {
        if (embedded.equals(Canonical.json(due))) {
            tally.agrees("derived values: " + due.values().size() + ", the same in the embedded dossier");
            tally.agrees("embedded dossier: " + due.chapters().size() + " chapters, "
                    + due.digests().size() + " digests, sheets, forms and dates are those the sources give");
            return false;
        }
        Optional<DossierComparison> comparison = DossierComparison.of(pdf.name(), embedded, due);
        if (comparison.isEmpty()) {
            tally.differs(Refusal.finding(
                    DossierComparison.DOSSIER,
                    pdf.name(),
                    "the embedded `" + DOSSIER + "` is not the form in which this program writes a dossier",
                    "ask whoever handed the file over for the file as it was made"));
            return false;
        }
        List<Finding> values = comparison.get().values();
        if (values.isEmpty()) {
            tally.agrees("derived values: " + due.values().size() + ", the same in the embedded dossier");
        }
        tally.differ(values, "derived values differ");
        Optional<String> version = comparison.get().otherVersion();
        if (version.isEmpty()) {
            List<Finding> rest = comparison.get().rest();
            if (values.isEmpty() && rest.isEmpty()) {
                tally.differs(Refusal.finding(
                        DossierComparison.DOSSIER,
                        pdf.name(),
                        "the embedded `" + DOSSIER
                                + "` says the same as the sources, but not in the form this program writes",
                        "ask whoever handed the file over for the file as it was made"));
            }
            tally.differ(rest, "parts of the dossier differ");
            return false;
        }
        List<String> parts = comparison.get().parts();
        tally.cannotSay("version: made by " + version.get() + ", this is " + MadeBy.version()
                + "; whether what differs is due to that");
        comparison.get().rules().forEach(rule -> tally.cannotSay("rules of another version: " + rule));
        if (!parts.isEmpty()) {
            tally.differs(otherVersion(pdf, version.get(), "parts of the dossier", parts));
        }
        return true;
    }

    private static Finding otherVersion(ReceivedPdf pdf, String version, String what, List<String> lines) {
        return Refusal.finding(
                        DossierComparison.OTHER_VERSION,
                        pdf.name(),
                        "the file says that it was made by version " + version + ", this is " + MadeBy.version()
                                + ", and " + lines.size() + " " + what + " differ",
                        "have it audited by version " + version + ", which must find no difference")
                .because(lines.size() <= 10 ? lines : concat(lines.subList(0, 10), "…"));
    }

    private static List<String> concat(List<String> lines, String last) {
        List<String> all = new ArrayList<>(lines);
        all.add(last);
        return all;
    }

    /** Prepares what the pages are held against, in the state that the file says it was printed in. */
    private Optional<Prints> printed(
            ReceivedPdf pdf, Cell cell, Printable recomputed, String printed, boolean otherVersion) {
        String state = Canonical.leaves(printed)
                .map(leaves -> leaves.getOrDefault(List.of("state"), ""))
                .orElse("");
        Verdict verdict = state.equals(Printed.RELEASED) ? Decision.release(recomputed) : recomputed;
        if (!(verdict instanceof Printable printable)) {
            List<String> bars =
                    recomputed.missing().stream().map(Finding::sentence).toList();
            tally.differs(Refusal.finding(
                            STATE,
                            pdf.name(),
                            "the file says that it is a release, and " + bars.size()
                                    + (bars.size() == 1 ? " thing bars" : " things bar") + " release",
                            "take it for a draft, if for anything, and ask who released it")
                    .because(bars));
            tally.cannotSay(
                    "pages: nothing is printed as a release while release is barred, so that there is nothing to hold"
                            + " them against");
            return Optional.empty();
        }
        tally.agrees("state: printed as a " + (printable.draft() ? "draft" : "release") + ", "
                + printable.missing().size() + " things bar release");
        attachments(pdf, recomputation.attachments(cell, printable), otherVersion);
        Markup markup = new Markup(printable);
        MetadataAudit.run(pdf, markup, printable.dossier().label(), tally);
        return Optional.of(new Prints(cell, printable, markup, otherVersion));
    }

    /** Each embedded file is one that would be embedded, and none is missing; the dossier was looked at before. */
    private void attachments(ReceivedPdf pdf, List<Attachment> due, boolean otherVersion) {
        Map<String, Attachment> byName = new HashMap<>();
        due.forEach(one -> byName.put(one.name(), one));
        List<String> wrong = new ArrayList<>();
        for (Embedded file : pdf.files()) {
            Attachment wanted = byName.remove(file.name());
            if (wanted == null) {
                wrong.add("`" + file.name() + "` is no source of this cell");
            } else if (!file.mediaType().equals(wanted.mediaType())
                    || !file.description().equals(wanted.description())
                    || !file.relationship().equals(wanted.relationship().word())) {
                wrong.add("`" + file.name() + "` is described otherwise than this program does");
            } else if (!file.name().equals(DOSSIER)
                    && !Arrays.equals(file.content(), wanted.content())
                    && !otherVersion) {
                wrong.add("`" + file.name() + "` is not as this program writes it");
            }
        }
        byName.keySet().stream().sorted().forEach(name -> wrong.add("`" + name + "` is missing"));
        if (wrong.isEmpty()) {
            tally.agrees("embedded files: " + pdf.files().size() + ", each where it belongs");
        }
        tally.differ(
                wrong.stream()
                        .map(one -> Refusal.finding(
                                EmbeddedFiles.ATTACHMENT,
                                pdf.name(),
                                "the embedded files are not those of a safety file: " + one,
                                "open none of them before you know who made the file"))
                        .toList(),
                "embedded files");
    }

    private void pages(ReceivedPdf pdf, List<PageText> texts, Prints prints) {
        List<TextComparison.Difference> differences =
                TextComparison.of(DueText.of(prints.markup().safetyFile()), texts);
        if (differences.isEmpty()) {
            tally.agrees("pages: " + texts.size() + ", every word is due and every word that is due is there");
            return;
        }
        if (prints.otherVersion()) {
            tally.differs(otherVersion(
                    pdf,
                    "another",
                    "places on its pages",
                    differences.stream().map(Examination::told).toList()));
            return;
        }
        tally.differ(
                differences.stream()
                        .map(one -> Refusal.finding(
                                PAGE,
                                pdf.name(),
                                told(one),
                                "go by the embedded sources; ask whoever handed the file over who changed the page"))
                        .toList(),
                "places on the pages differ");
    }

    private static String told(TextComparison.Difference one) {
        return one.says().isBlank()
                ? "page " + one.page() + " lacks `" + one.due().strip() + "`"
                : one.due().isBlank()
                        ? "page " + one.page() + " says `" + one.says().strip() + "`, and nothing of that is due"
                        : "page " + one.page() + " says `" + one.says().strip() + "`, due is `"
                                + one.due().strip() + "`";
    }

    /** What is named in the sources and does not travel with them. */
    private void notHere(Cell cell) {
        Set<String> chapters = cell.copies().carried().keySet().stream()
                .filter(chapter -> !chapter.equals(Substance.WHOLE))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!chapters.isEmpty()) {
            tally.cannotSay("left out of this copy, so that their digests could not be recomputed: the chapters `"
                    + String.join("`, `", chapters) + "`");
        }
        List<String> evidence = cell.statements().stream()
                .filter(statement -> statement.path().matches(".*evidence\\b.*\\bfile"))
                .map(statement -> statement.value())
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        if (!evidence.isEmpty()) {
            tally.cannotSay("evidence that is named by its digest and kept elsewhere: " + evidence.size()
                    + (evidence.size() == 1 ? " file" : " files") + ", such as " + evidence.get(0));
        }
        tally.cannotSay("whether what is stated is true of the cell");
    }

    /** The embedded sources as the files of a folder. */
    private final class Sources implements World {
        @Override
        public List<Entry> entries() {
            return sources.entrySet().stream()
                    .map(file -> new Entry(
                            file.getKey(),
                            true,
                            file.getValue().length,
                            () -> new ByteArrayInputStream(file.getValue())))
                    .toList();
        }

        @Override
        public boolean whole() {
            return false;
        }

        @Override
        public LocalDate today() {
            throw new IllegalStateException("what a file was printed from does not depend on the day it is audited");
        }
    }
}
