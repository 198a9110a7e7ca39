package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.cellfile.cell.Cell;
import org.cellfile.cell.OutsideCopy;
import org.cellfile.cell.Substances;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.CsvFile;
import org.cellfile.source.Stated;
import org.cellfile.subject.signoff.InternalPart;

/**
 * The plant names something as internal that is not there, or on which something rests. Whether something does is found by leaving
 * it out: a copy must be found fault with as the full description is, and give the same values.
 */
@AutoService(Check.class)
public final class RefuseInternalPart implements Check {

    public static final FindingId NOT_THERE = new FindingId("copies.not-there");
    public static final FindingId RESTS_ON_IT = new FindingId("copies.rests-on-it");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        if (!cell.copies().withoutInternalParts()
                || cell.copies().isCopy()
                || cell.copies().internal().isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Map<Stated<String>, InternalPart> there = new LinkedHashMap<>();
        for (Stated<String> path : cell.copies().internal()) {
            InternalPart part = new InternalPart(path.characters(), "");
            List<Statement> statements =
                    cell.statements().stream().filter(part::holds).toList();
            Optional<String> kept = kept(statements);
            if (statements.isEmpty()) {
                findings.add(notThere(path, cell));
            } else if (kept.isPresent()) {
                findings.add(restsOnIt(path, kept.get()));
            } else {
                there.put(path, part);
            }
        }
        Outcome before = Outcome.of(cell, InternalPart.ALWAYS);
        List<InternalPart> parts = new ArrayList<>(InternalPart.ALWAYS);
        parts.addAll(there.values());
        if (Outcome.of(cell, parts).unlike(before).isPresent()) {
            findings.addAll(oneByOne(cell, there, before));
        }
        return findings;
    }

    /** Which of them it is; what was refused is not left out when the next is tried. */
    private static List<Finding> oneByOne(Cell cell, Map<Stated<String>, InternalPart> there, Outcome before) {
        List<Finding> findings = new ArrayList<>();
        List<InternalPart> parts = new ArrayList<>(InternalPart.ALWAYS);
        there.forEach((path, part) -> {
            parts.add(part);
            Outcome.of(cell, parts).unlike(before).ifPresent(because -> {
                parts.remove(part);
                findings.add(restsOnIt(path, because));
            });
        });
        return findings;
    }

    private static Finding restsOnIt(Stated<String> path, String because) {
        return Finding.refuses(
                        RESTS_ON_IT,
                        "",
                        path.where(),
                        "`" + path.characters() + "` cannot be left out of copies",
                        "name texts only from which nothing is computed and on which no check rests")
                .because(List.of(because));
    }

    private static Finding notThere(Stated<String> path, Cell cell) {
        return Finding.refuses(
                NOT_THERE,
                "",
                path.where(),
                "nothing is stated under `" + path.characters() + "` that could be left out of copies",
                "write the keys that lead to a value with `/` between them and `*` for any one step, as in `"
                        + InternalPart.ALWAYS.get(0).path() + "`"
                        + cell.statements().stream()
                                .map(Statement::path)
                                .filter(one -> one.startsWith(path.characters() + "/"))
                                .findFirst()
                                .map(one -> "; a value below it is `" + one + "`")
                                .orElse(""));
    }

    /** Why some values are always kept. */
    private static Optional<String> kept(List<Statement> statements) {
        for (Statement statement : statements) {
            if (InternalPart.isName(statement)) {
                return Optional.of("the names of people stay, since a reader must see who measured, tested and signed");
            }
            if (statement.key().equals(CsvFile.TABLE)) {
                return Optional.of("it stands in a table of numbers");
            }
            if (Substances.chapter(statement.key()).isEmpty()) {
                return Optional.of(
                        "`" + statement.key() + "` tells about signing and copies, and what it tells is needed there");
            }
        }
        return Optional.empty();
    }

    /**
     * What a copy comes to.
     *
     * @param findings what was found, by what it is about and where
     * @param values derived, by tag
     */
    private record Outcome(Map<String, Finding> findings, Map<String, String> values, String digest) {

        static Outcome of(Cell full, List<InternalPart> parts) {
            Findings findings = new Findings();
            Map<String, String> values = new TreeMap<>();
            Optional<Cell> copy = Cell.read(OutsideCopy.world(full, parts), findings);
            copy.ifPresent(cell -> {
                findings.addAll(cell.findings());
                findings.addAll(Checks.run(cell, Optional.empty()));
                cell.derived()
                        .forEach((tag, derived) -> values.put(
                                tag,
                                derived.rounded().map(Quantity::toString).orElse("") + " "
                                        + derived.unrounded()
                                                .map(Quantity::toString)
                                                .orElse("")));
            });
            Map<String, Finding> found = new TreeMap<>();
            findings.sorted().stream()
                    .filter(finding -> !finding.id().equals(BarCopy.ID))
                    .forEach(finding -> found.put(
                            finding.where().file().path() + ":"
                                    + finding.where().line() + " "
                                    + finding.id().words() + " " + finding.about(),
                            finding));
            return new Outcome(
                    found, values, copy.map(cell -> cell.substance().digest()).orElse(""));
        }

        /** How it differs from a copy that holds more, in words. */
        Optional<String> unlike(Outcome other) {
            Optional<String> more = only(findings, other.findings)
                    .map(finding -> "without it this would be found: " + finding.sentence() + " ("
                            + finding.where().position() + ")");
            Optional<String> fewer = only(other.findings, findings)
                    .map(finding -> "without it this would not be found: " + finding.sentence() + " ("
                            + finding.where().position() + ")");
            return more.or(() -> fewer)
                    .or(() -> value(other))
                    .or(() -> digest.equals(other.digest)
                            ? Optional.empty()
                            : Optional.of("without it the digest of the whole is another one"));
        }

        private static Optional<Finding> only(Map<String, Finding> here, Map<String, Finding> there) {
            return here.entrySet().stream()
                    .filter(entry -> !there.containsKey(entry.getKey()))
                    .map(Map.Entry::getValue)
                    .findFirst();
        }

        private Optional<String> value(Outcome other) {
            Set<String> tags = new HashSet<>(values.keySet());
            tags.addAll(other.values.keySet());
            return tags.stream()
                    .sorted()
                    .filter(tag -> !values.getOrDefault(tag, "").equals(other.values.getOrDefault(tag, "")))
                    .map(tag -> "`" + tag + "` is derived from it")
                    .findFirst();
        }
    }
}
