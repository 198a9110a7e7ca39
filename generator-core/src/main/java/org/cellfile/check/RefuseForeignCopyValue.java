package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.standard.Asked;
import org.cellfile.standard.CopyKey;
import org.cellfile.standard.Editions;
import org.cellfile.subject.identity.Confirmation;
import org.cellfile.subject.identity.CopyValue;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.ReadInCopy;

/** A value from a copy that somebody without a copy read, that is stated twice, that no table has, or that nothing rests on. */
@AutoService(Check.class)
public final class RefuseForeignCopyValue implements Check {

    public static final FindingId REPEATED = new FindingId("copy-value.repeated");
    public static final FindingId NO_SUCH_ROW = new FindingId("copy-value.no-such-row");
    public static final FindingId NOT_USED = new FindingId("copy-value.not-used");

    /** An id and for what it holds. */
    private record Meant(String id, CopyKey key) {}

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        Map<Meant, Stated<?>> met = new HashMap<>();
        for (CopyValue value : cell.identity().copyValues()) {
            value.asked().ifPresent(asked -> {
                notHeld(cell, value, asked).ifPresent(findings::add);
                confirmedToo(cell, value, asked).ifPresent(findings::add);
                notUsed(cell, value).ifPresent(findings::add);
                for (CopyValue.Part part : value.parts()) {
                    repeated(met, value, part).ifPresent(findings::add);
                    noSuchRow(asked, part).ifPresent(findings::add);
                }
            });
        }
        return findings;
    }

    private static Optional<Finding> notHeld(Cell cell, CopyValue value, Asked asked) {
        String edition = asked.reference().clause().edition();
        return cell.identity()
                .person(value.by())
                .filter(person -> !person.holds(edition))
                .map(person -> Finding.refuses(
                        RefuseForeignConfirmation.NOT_HELD,
                        value.value().characters(),
                        value.by().where(),
                        "`" + value.value().characters() + "` is stated as read by `"
                                + value.by().characters() + "`, who holds no copy of " + edition,
                        "name a person under whose `holds` the edition stands"));
    }

    /** A table may have cells from a copy and the rest confirmed; a single value is either stated or confirmed. */
    private static Optional<Finding> confirmedToo(Cell cell, CopyValue value, Asked asked) {
        if (asked.ours().size() > 1) {
            return Optional.empty();
        }
        return cell.identity().confirmations().stream()
                .filter(confirmation ->
                        confirmation.value().characters().equals(value.value().characters()))
                .findFirst()
                .map(Confirmation::value)
                .map(other -> repeated(value.value(), "", "confirmed", other));
    }

    private static Optional<Finding> repeated(Map<Meant, Stated<?>> met, CopyValue value, CopyValue.Part part) {
        Stated<?> other = met.putIfAbsent(new Meant(value.value().characters(), part.key()), part.is());
        return Optional.ofNullable(other)
                .map(one -> repeated(value.value(), part.key().words(), "stated", one, part.is()));
    }

    private static Finding repeated(Stated<String> id, String key, String how, Stated<?> other) {
        return repeated(id, key, how, other, id);
    }

    private static Finding repeated(Stated<String> id, String key, String how, Stated<?> other, Stated<?> at) {
        return Finding.refuses(
                REPEATED,
                id.characters(),
                at.where(),
                "`" + id.characters() + "`" + key + " is " + how + " at "
                        + other.where().position() + " as well",
                "keep the one that says what the copy says");
    }

    private static Optional<Finding> noSuchRow(Asked asked, CopyValue.Part part) {
        if (asked.ours().isEmpty() || asked.ours().containsKey(part.key())) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                NO_SUCH_ROW,
                asked.reference().id(),
                part.is().where(),
                "`" + asked.reference().id() + "` has no cell" + part.key().words() + " ("
                        + asked.reference().clause() + ")",
                Editions.idOf(asked.reference().clause(), part.key())
                        .map(other -> "that cell of the table is asked for under `" + other + "`")
                        .orElse(
                                "state the cells at the heights or the greatest openings that head the rows and columns of"
                                        + " the table")));
    }

    private static Optional<Finding> notUsed(Cell cell, CopyValue value) {
        // What could not be derived may be just what the value is for; why it could not is told elsewhere.
        boolean incomplete = cell.derived().values().stream()
                .anyMatch(derived -> derived.value().isEmpty());
        boolean unread = value.parts().isEmpty()
                || value.parts().stream().anyMatch(part -> part.is().value().isEmpty());
        if (incomplete || unread || isUsed(Composition.references(cell), value)) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                NOT_USED,
                value.value().characters(),
                value.value().where(),
                "`" + value.value().characters() + "` is stated from a copy, but no value of this cell rests on it",
                "delete it, or put the edition in force that it belongs to"));
    }

    private static boolean isUsed(Set<Reference> references, CopyValue value) {
        boolean ofASafeguard = value.parts().stream().allMatch(part -> part.key() instanceof CopyKey.OfSafeguard);
        return references.stream()
                .filter(reference -> reference.id().equals(value.value().characters()))
                .anyMatch(reference -> !ofASafeguard || isThisOne(reference, value));
    }

    /** A value that depends on the safeguard has one id for all; the place tells which one was used. */
    private static boolean isThisOne(Reference reference, CopyValue value) {
        return reference.standing() instanceof ReadInCopy read
                && read.place().equals(value.value().where().position());
    }
}
