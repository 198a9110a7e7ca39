package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.register.ModificationDecision;

/** Somebody decided whether a change is a substantial modification otherwise than the answers have it, or it was decided twice. */
@AutoService(Check.class)
public final class RefuseContradictedDecision implements Check {

    public static final FindingId CONTRADICTS = new FindingId("decision.contradicts-answers");
    public static final FindingId REPEATED = new FindingId("decision.repeated");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        Map<String, ModificationDecision> decided = new HashMap<>();
        for (ModificationDecision decision : cell.registers().decisions()) {
            contradiction(decision).ifPresent(findings::add);
            decision.of()
                    .value()
                    .flatMap(change -> Optional.ofNullable(decided.putIfAbsent(change, decision)))
                    .ifPresent(first -> findings.add(repeated(first, decision)));
        }
        return findings;
    }

    private static Optional<Finding> contradiction(ModificationDecision decision) {
        Optional<String> stated = decision.substantial().value();
        return decision.follows()
                .filter(follows -> stated.isPresent() && !stated.get().equals(follows))
                .map(follows -> Finding.refuses(
                                CONTRADICTS,
                                decision.tag().characters(),
                                decision.substantial().where(),
                                "`" + decision.tag().characters() + "` concludes `substantial: " + stated.get()
                                        + "` of the change `" + decision.of().characters() + "`, and from its answers `"
                                        + follows + "` follows",
                                "have whoever decided go through the questions again; the decision is theirs, and so are the answers")
                        .because(because(decision)));
    }

    private static List<String> because(ModificationDecision decision) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "substantial = not foreseen and a new or higher risk and (guards or control needed or strength needed)");
        decision.answered()
                .subList(0, 4)
                .forEach(question -> lines.add((question.answer().characters() + "  ").substring(0, 3) + "  "
                        + question.words() + "  " + question.answer().where().position()));
        lines.add("Regulation (EU) 2023/1230, Article 3(16) (from memory)");
        return lines;
    }

    private static Finding repeated(ModificationDecision first, ModificationDecision second) {
        return Finding.refuses(
                REPEATED,
                second.tag().characters(),
                second.of().where(),
                "whether the change `" + second.of().characters() + "` is substantial is decided here and at "
                        + first.of().where().position(),
                "keep the one decision that counts; the earlier state of this description keeps the other");
    }
}
