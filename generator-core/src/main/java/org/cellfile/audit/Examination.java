package org.cellfile.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
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
import org.cellfile.dossier.Printed;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
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

    /** The attachment that holds the dossier. */
    public static final String DOSSIER = "dossier.json";

    /** The attachment that says how it was printed. */
    public static final String PRINTED = "printed.json";

    private static final Set<String> OURS = Set.of(DOSSIER, PRINTED);
    private static final String LEDGER = "derived.yaml";

    private final Recomputation recomputation;
    private final TrustedKeys trusted;
    private final boolean redraw;
    private final Tally tally = new Tally();
    private final SortedMap<String, byte[]> sources = new TreeMap<>();

    /** True when the file says that another version made it and differs from what this one makes. */
    private boolean otherVersion;

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
        CompletableFuture<Identifier.Worth> computed = CompletableFuture.supplyAsync(() -> Identifier.of(bytes));
        CompletableFuture<Void> prepared = CompletableFuture.runAsync(Markup::prepare);
        try (ReceivedPdf pdf = opened(file.path(), bytes, computed)) {
            Identifier.Worth identifier = computed.join();
            prepared.join();
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
                tally.agrees(
                        "identifier: that of all its bytes, so that none was changed, unless somebody wrote it anew");
            } else if (identifier == Identifier.Worth.NONE) {
                identifier(file.path(), "it has no identifier as this program writes it, or more than one");
            }
            pdf.files().stream()
                    .filter(one -> !OURS.contains(one.name()))
                    .forEach(one -> sources.put(one.name(), one.content()));
            look(pdf, text(dossier.get()), text(printed.get()));
        }
    }

    /** Opens it, and says of one that cannot be opened whether it was changed. */
    private ReceivedPdf opened(String file, byte[] bytes, CompletableFuture<Identifier.Worth> identifier)
            throws Refusal {
        try {
            return ReceivedPdf.open(file, bytes);
        } finally {
            if (identifier.join() == Identifier.Worth.DIFFERS) {
                identifier(file, "its identifier is not that of its bytes");
            }
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
            new PagesAudit(pdf.name(), tally)
                    .run(pages.texts(), prints.get().text().join(), otherVersion);
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
     * @param text what its pages must say; made while other things are compared
     */
    private record Prints(Cell cell, Printable printable, Markup markup, CompletableFuture<DueText> text) {}

    private Optional<Prints> recomputed(
            ReceivedPdf pdf, Recomputation.Outcome outcome, String dossier, String printed) {
        Optional<Prints> prints = Optional.empty();
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
        } else if (outcome.verdict() instanceof Printable printable) {
            tally.agrees("sources: " + counted(sources.size(), "file", "files") + ", recomputed; nothing refuses");
            prints = printed(pdf, outcome.cell().orElseThrow(), printable, printed);
        }
        outcome.cell()
                .ifPresent(cell -> otherVersion = new DossierAudit(pdf.name(), tally)
                        .run(
                                dossier,
                                outcome.verdict() instanceof Printable printable
                                        ? printable.dossier()
                                        : Composition.compose(cell)));
        ledger(outcome);
        prints.ifPresent(one -> {
            new AttachmentsAudit(pdf, tally).run(recomputation.attachments(one.cell(), one.printable()), otherVersion);
            MetadataAudit.run(pdf, one.markup(), one.printable().dossier().label(), tally);
        });
        return prints;
    }

    /** What the pages are held against, in the state in which the file says that it was printed. */
    private Optional<Prints> printed(ReceivedPdf pdf, Cell cell, Printable recomputed, String printed) {
        String state = Canonical.leaves(printed)
                .map(leaves -> leaves.getOrDefault(List.of("state"), ""))
                .orElse("");
        Verdict verdict = state.equals(Printed.RELEASED) ? Decision.release(recomputed) : recomputed;
        if (verdict instanceof Printable printable) {
            int missing = printable.missing().size();
            tally.agrees("state: printed as a "
                    + (printable.draft()
                            ? "draft, and "
                                    + (missing == 0 ? "nothing bars" : counted(missing, "thing bars", "things bar"))
                                    + " release"
                            : "release, and nothing bars one"));
            Markup markup = new Markup(printable);
            return Optional.of(new Prints(
                    cell, printable, markup, CompletableFuture.supplyAsync(() -> DueText.of(markup.safetyFile()))));
        }
        List<String> bars = recomputed.missing().stream().map(Finding::sentence).toList();
        tally.differs(Refusal.finding(
                        STATE,
                        pdf.name(),
                        "the file says that it is a release, and " + counted(bars.size(), "thing bars", "things bar")
                                + " release",
                        "take it for a draft, if for anything, and ask who released it")
                .because(bars));
        tally.cannotSay(
                "pages: nothing is printed as a release while release is barred, so that there is nothing to hold"
                        + " them against");
        return Optional.empty();
    }

    static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** The ledger of derived values is held against the recomputation wherever sources are; here it is only said. */
    private void ledger(Recomputation.Outcome outcome) {
        if (sources.keySet().stream().noneMatch(name -> name.equals(LEDGER) || name.endsWith("/" + LEDGER))) {
            tally.cannotSay(
                    "ledger: the sources hold none, so that a number that was always wrong is not told from one that"
                            + " was changed");
        } else if (outcome.verdict().findings().stream()
                .noneMatch(finding -> finding.id().words().startsWith("ledger."))) {
            tally.agrees("ledger: every derived value as it was entered");
        }
    }

    /** What is named in the sources and does not travel with them. */
    private void notHere(Cell cell) {
        Set<String> chapters = cell.copies().carried().keySet().stream()
                .filter(chapter -> !chapter.equals(Substance.WHOLE))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!chapters.isEmpty()) {
            tally.notReached(chapters);
            tally.cannotSay(
                    "parts are left out of this copy, so that no sign-off can be held against what stands in the"
                            + " chapters `" + String.join("`, `", chapters)
                            + "`: their digests are taken over and not recomputed, and everything in them could be anybody's; ask"
                            + " the plant for the full description");
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
                    .map(file -> Entry.held(file.getKey(), file.getValue()))
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
