package org.cellfile.subject.signoff;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.subject.identity.Identity;

/**
 * The sign-offs of a cell held against its substance.
 *
 * @param substance as it is now
 */
public record Signing(SignOffs stated, Identity identity, Substance substance) {

    /** Each sign-off in the order written, with what it is worth. */
    public List<Signed> signed() {
        return stated.signed().stream()
                .map(one -> new Signed(one, status(one), false, List.of()))
                .toList();
    }

    private SignOffStatus status(SignOff signOff) {
        Optional<String> now = substance.digest(signOff.covers().characters());
        if (now.isEmpty()) {
            return SignOffStatus.COVERS_NOTHING;
        }
        return now.equals(signOff.digest().value()) ? SignOffStatus.VALID : SignOffStatus.SUPERSEDED;
    }

    /** What does not hold about them. */
    public List<Finding> findings() {
        return List.of();
    }
}
