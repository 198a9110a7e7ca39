package org.cellfile.audit;

import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.signoff.Ed25519;
import org.cellfile.subject.signoff.SignOff;
import org.cellfile.subject.signoff.SignOffStatus;
import org.cellfile.subject.signoff.Signed;
import org.cellfile.subject.signoff.SigningKey;
import org.cellfile.subject.signoff.SigningMessage;

/**
 * Holds the sign-offs of a cell against keys that came on another way than the PDF. A key that stands only in the PDF proves nothing:
 * whoever wrote the file could have made it.
 */
final class SignOffAudit {

    /** A signature is not that of the key stated for it. */
    static final FindingId SIGNATURE = new FindingId("audit.signature");

    /** A key is trusted as somebody else's. */
    static final FindingId ANOTHER_OWNER = new FindingId("audit.another-owner");

    private final Cell cell;
    private final TrustedKeys trusted;
    private final Tally tally;

    SignOffAudit(Cell cell, TrustedKeys trusted, Tally tally) {
        this.cell = cell;
        this.trusted = trusted;
        this.tally = tally;
    }

    void run() {
        List<Signed> signed = cell.signing().signed();
        if (signed.isEmpty()) {
            tally.cannotSay("sign-offs: the sources hold none, so that nobody vouches for this state by name");
        }
        signed.forEach(this::look);
        if (!signed.isEmpty()) {
            tally.cannotSay(
                    "what no sign-off covers, so that anybody could have written it: the day the file speaks of,"
                            + " keys, decisions about changes, who was briefed on the sheets");
        }
    }

    private void look(Signed signed) {
        SignOff signOff = signed.signOff();
        String signer = cell.identity().nameOf(signOff.by());
        String line = "sign-off `" + signOff.words().characters() + "` of "
                + SignOff.covered(signOff.covers().characters()) + " by " + signer + " on "
                + signOff.on().characters() + ": " + signed.status().words();
        if (signOff.signature().value().isEmpty()) {
            tally.cannotSay(line + "; typed, not proven");
            return;
        }
        String publicKey = publicKey(signOff);
        boolean holds = Ed25519.publicKey(publicKey)
                .filter(key -> Ed25519.holds(
                        key,
                        SigningMessage.of(cell.identity().facts().id().characters(), signer, signOff),
                        signOff.signature().characters()))
                .isPresent();
        if (!holds) {
            tally.differs(Finding.refuses(
                    SIGNATURE,
                    signOff.key().characters(),
                    signOff.where(),
                    "the signature of the " + line + " is not that of the key `"
                            + signOff.key().characters() + "`",
                    "ask " + signer + " whether they signed this state"));
            return;
        }
        origin(signed, signer, line, trusted.owners(publicKey));
    }

    private void origin(Signed signed, String signer, String line, List<String> owners) {
        if (owners.contains(signer)) {
            tally.agrees(line + "; signed with the trusted key of " + signer);
            if (signed.status() != SignOffStatus.SUPERSEDED
                    && signed.status() != SignOffStatus.COVERS_NOTHING
                    && signed.signOff().covers().characters().equals(Substance.WHOLE)) {
                tally.proven(signer + " (" + signed.signOff().words().characters() + ", "
                        + signed.signOff().on().characters() + ")");
            }
        } else if (!owners.isEmpty()) {
            tally.differs(Finding.refuses(
                    ANOTHER_OWNER,
                    signed.signOff().key().characters(),
                    signed.signOff().where(),
                    "the sources state the key `" + signed.signOff().key().characters() + "` as that of " + signer
                            + ", and it is trusted as that of " + String.join(" and ", owners),
                    "ask both whose key it is; until then the sign-off is nobody's"));
        } else {
            tally.cannotSay(line + "; consistent in itself, origin unproven: "
                    + (trusted.isEmpty()
                            ? "no keys from outside were given"
                            : "its key is not among the trusted ones"));
        }
    }

    private String publicKey(SignOff signOff) {
        Optional<String> tag = signOff.key().value();
        return cell.signOffs().keys().stream()
                .filter(key -> tag.isPresent() && key.tag().value().equals(tag))
                .findFirst()
                .map(SigningKey::publicKey)
                .map(key -> key.value().orElse(""))
                .orElse("");
    }
}
