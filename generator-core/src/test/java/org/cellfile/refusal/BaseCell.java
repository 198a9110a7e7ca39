package org.cellfile.refusal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.JudgingDay;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingText;
import org.cellfile.subject.plan.Plan;
import org.cellfile.subject.signoff.Ed25519;
import org.cellfile.subject.signoff.KeyFile;
import org.cellfile.subject.signoff.SignOff;
import org.cellfile.subject.signoff.SigningMessage;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Printable;
import org.cellfile.verdict.Verdict;

/**
 * The small cell in which everything holds, and what is laid over it. All figures are constructed.
 *
 * <p>As it lies there nobody signed it, since each case changes it and would void every sign-off; what is found about sign-offs is
 * left out of {@link #check}, so that each case tells its own matter only. Cases about sign-offs are laid over the signed cell, and
 * all that is found counts: see {@link #signed} and {@link #checkSigned}. The signed cell also has a plan; the base cell has none, as
 * most cases change what would stand on it, and that it has none is left out as well. Cases about the plan are laid over
 * {@link #planned}.
 */
public final class BaseCell {

    /** The module is the working folder of its tests. */
    static final Path REFUSALS = Path.of("src", "test", "resources", "refusals");

    private static final Path SIGNED = REFUSALS.resolveSibling("signed");
    public static final Path KEYS = REFUSALS.resolveSibling("keys");
    private static final String NOUGHTS = "0".repeat(64);
    private static final String MADE_HERE = "signature: MADE-HERE";

    private static final String AS_IT_IS = "wording: as-it-is";
    private static final Pattern WORDING = Pattern.compile("`(wording: [0-9a-f-]+)`");

    static final String EXPECTED = "expected.txt";
    private static final String REMOVE = "remove.txt";
    private static final String JUDGED = "day.txt";
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private BaseCell() {}

    /** A copy of the base cell in an empty folder. */
    public static Path copyTo(Path folder) {
        copy(REFUSALS.resolve("base"), folder);
        reviewedAsItIs(folder);
        return folder;
    }

    /**
     * Puts the digest of the wording as it is into every review that is to be of that, as the findings tell it: whatever is mended
     * in the wording of the program would void it.
     */
    public static void reviewedAsItIs(Path folder) {
        try {
            Path file = folder.resolve("sheets.yaml");
            if (!Files.exists(file) || !Files.readString(file).contains(AS_IT_IS)) {
                return;
            }
            List<String> lines = new ArrayList<>(Files.readAllLines(file));
            for (Finding finding : checkSigned(folder).findings()) {
                Matcher wording = WORDING.matcher(finding.help());
                if (finding.id().words().equals("language.review-lapsed") && wording.find()) {
                    lines.set(
                            finding.where().line() - 1,
                            lines.get(finding.where().line() - 1).replace(AS_IT_IS, wording.group(1)));
                }
            }
            Files.write(file, lines);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * A copy of the base cell with the files of a case in place of its own. A case may name base files to leave out, {@code all} for
     * all of them, and a day to be judged by.
     */
    static Path overlay(Path files, Path folder) throws IOException {
        List<String> without =
                Files.exists(files.resolve(REMOVE)) ? Files.readAllLines(files.resolve(REMOVE)) : List.of();
        if (!without.equals(List.of("all"))) {
            copyTo(folder);
            for (String name : without) {
                Files.delete(folder.resolve(name));
            }
            if (without.contains("functions.yaml")) {
                withoutConfirmationsOfFunctions(folder);
            }
        }
        copy(files, folder);
        reviewedAsItIs(folder);
        return folder;
    }

    /** Nothing rests on what was confirmed for the safety functions, where a case leaves these out. */
    static void withoutConfirmationsOfFunctions(Path folder) throws IOException {
        Path standards = folder.resolve("standards.yaml");
        if (Files.exists(standards)) {
            Files.write(
                    standards,
                    Files.readAllLines(standards).stream()
                            .filter(line -> !line.contains("{value: iso-13849-1-") && !line.contains(".function-"))
                            .toList());
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                if (!Set.of(EXPECTED, REMOVE, JUDGED)
                        .contains(file.getFileName().toString())) {
                    Path target = to.resolve(from.relativize(file).toString());
                    Files.createDirectories(target.getParent());
                    Files.write(target, Files.readAllBytes(file));
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** True when a case is about the plan. */
    static boolean isAboutThePlan(String id) {
        return id.startsWith("plan.") || id.endsWith("-on-plan") || id.equals("installed.perimeter-open");
    }

    /** The base cell with its plan, and the files of a case in place of their own. */
    static Path planned(Path files, Path folder) throws IOException {
        overlay(files, folder);
        return withPlan(folder);
    }

    /** Adds the plan of the base cell where there is none. */
    public static Path withPlan(Path folder) throws IOException {
        Path plan = folder.resolve("plan.yaml");
        if (!Files.exists(plan)) {
            Files.write(plan, Files.readAllBytes(SIGNED.resolve("plan.yaml")));
        }
        return folder;
    }

    /** True when a case is about signing. */
    static boolean isAboutSigning(String id) {
        return id.startsWith("sign-off.") || id.startsWith("key.");
    }

    /** The signed base cell as it is. */
    public static Path signed(Path folder) throws IOException {
        return signed(folder.resolve("nothing laid over it"), folder);
    }

    /**
     * The base cell with people who sign, their keys and their sign-offs, and the files of a case over it: digests and signatures
     * are put in last, so that they are those of the cell as the case has it.
     */
    public static Path signed(Path files, Path folder) throws IOException {
        copyTo(folder);
        copy(SIGNED, folder);
        if (Files.exists(files)) {
            copy(files, folder);
            reviewedAsItIs(folder);
        }
        Path list = folder.resolve("sign-offs.yaml");
        String text = Files.readString(list);
        for (boolean signing : new boolean[] {false, true}) { // what is signed holds the digest
            Cell cell = checked(folder).cell().orElseThrow();
            for (SignOff one : cell.signOffs().signed()) {
                if (!signing && one.digest().characters().equals(NOUGHTS)) {
                    text = text.replaceFirst(
                            NOUGHTS,
                            cell.substance().digest(one.covers().characters()).orElse("f".repeat(NOUGHTS.length())));
                } else if (signing && MADE_HERE.endsWith(" " + one.signature().characters())) {
                    text = text.replaceFirst(MADE_HERE, "signature: " + Matcher.quoteReplacement(signature(cell, one)));
                }
            }
            Files.writeString(list, text);
        }
        return folder;
    }

    private static String signature(Cell cell, SignOff one) throws IOException {
        try {
            return Ed25519.sign(
                    KeyFile.of(Files.readString(KEYS.resolve(one.key().characters() + ".pem")))
                            .orElseThrow()
                            .open(new char[0]),
                    SigningMessage.of(
                            cell.identity().facts().id().characters(),
                            cell.identity().nameOf(one.by()),
                            one));
        } catch (KeyFile.Unusable failed) {
            throw new IOException(failed);
        }
    }

    /** Replaces text that must be there. */
    static void change(Path folder, String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        if (!text.contains(from)) {
            throw new IllegalArgumentException(file + " does not hold " + from);
        }
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    /** What is found, but for what is found about sign-offs. */
    static Verdict check(Path folder) {
        return withoutSignOffs(checkSigned(folder));
    }

    private static Verdict withoutSignOffs(Verdict all) {
        return Decision.decide(
                all.findings().stream()
                        .filter(finding -> !finding.id().words().startsWith("sign-off.")
                                && !finding.id().equals(Plan.MISSING))
                        .toList(),
                List.of(), // deviations were taken into account
                () -> ((Printable) all).dossier());
    }

    /** All that is found. */
    static Verdict checkSigned(Path folder) {
        return checked(folder).verdict();
    }

    static Generator.Checked checked(Path folder) {
        return new Generator().check(new FolderWorld(folder, DAY));
    }

    /** The same; where a case names a day, it is judged by that. */
    static Verdict check(Path folder, Path files) throws IOException {
        Path judged = files.resolve(JUDGED);
        Optional<LocalDate> day = Files.exists(judged)
                ? Optional.of(JudgingDay.of(Files.readString(judged).strip()))
                : Optional.empty();
        return withoutSignOffs(
                new Generator().check(new FolderWorld(folder, DAY), day).verdict());
    }

    static List<String> ids(List<Finding> findings) {
        return findings.stream().map(finding -> finding.id().words()).toList();
    }

    /** What {@code check} prints, but for the digest of the wording as it is. */
    static String printed(Verdict verdict) {
        return WORDING.matcher(FindingText.of(verdict.findings())).replaceAll("`" + AS_IT_IS + "`")
                + FindingText.count(verdict.findings()) + "; " + verdict.outcome()
                + "\n";
    }
}
