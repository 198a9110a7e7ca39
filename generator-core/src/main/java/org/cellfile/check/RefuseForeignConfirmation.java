package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.subject.identity.Confirmation;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.NotPublic;

/** A confirmation of something that is not used, or by somebody who does not hold the standard. */
@AutoService(Check.class)
public final class RefuseForeignConfirmation implements Check {

    public static final FindingId NOT_USED = new FindingId("confirmation.not-used");
    public static final FindingId NOT_HELD = new FindingId("confirmation.standard-not-held");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        // What is not publicly known is not held here, and nobody can confirm it.
        Set<Reference> references = Composition.references(cell).stream()
                .filter(reference -> !(reference.standing() instanceof NotPublic))
                .collect(Collectors.toSet());
        Set<String> ids = references.stream().map(Reference::id).collect(Collectors.toSet());
        // What could not be derived may be just what the confirmation is for; why it could not is told elsewhere.
        boolean incomplete = cell.derived().values().stream()
                .anyMatch(derived -> derived.value().isEmpty());
        List<Finding> findings = new ArrayList<>();
        for (Confirmation confirmation : cell.identity().confirmations()) {
            String value = confirmation.value().characters();
            Optional<Reference> reference =
                    references.stream().filter(one -> one.id().equals(value)).findFirst();
            if (reference.isEmpty() && incomplete) {
                continue;
            }
            if (reference.isEmpty()) {
                findings.add(Finding.refuses(
                        NOT_USED,
                        value,
                        confirmation.value().where(),
                        "`" + value + "` is confirmed, but no value of this cell rests on it",
                        Nearest.to(value, ids)
                                .map(near -> "`" + near + "` is nearest")
                                .orElse("the register of fixed values lists the ids")));
            } else if (!held(cell, confirmation, reference.get())) {
                findings.add(Finding.refuses(
                        NOT_HELD,
                        value,
                        confirmation.by().where(),
                        "`" + value + "` is confirmed by `" + confirmation.by().characters()
                                + "`, who holds no copy of "
                                + reference.get().clause().edition(),
                        "name a person under whose `holds` the edition stands"));
            }
        }
        return findings;
    }

    private static boolean held(Cell cell, Confirmation confirmation, Reference reference) {
        return cell.identity()
                .person(confirmation.by())
                .map(person -> person.holds(reference.clause().edition()))
                .orElse(true);
    }
}
