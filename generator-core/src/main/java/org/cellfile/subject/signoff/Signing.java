package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.identity.Identity;

/**
 * The sign-offs of a cell held against its substance.
 *
 * @param substance as it is now
 */
public record Signing(SignOffs stated, Identity identity, Substance substance) {

    /** What was signed is no chapter of this cell. */
    static final FindingId COVERS_NOTHING = new FindingId("sign-off.covers-nothing");

    /** The same was signed before. */
    static final FindingId REPEATED = new FindingId("sign-off.repeated");

    /** What is asked for, in the order in which the words are said. */
    public List<Asked> asked() {
        return Asked.all(stated.asked());
    }

    /** Each sign-off that could be read, in the order written, with what it is worth. */
    public List<Signed> signed() {
        return signed(statuses());
    }

    /** What has to be signed before that one and was not by its day, in words. */
    public List<String> toBeSignedFirst(SignOff one) {
        return statuses().toBeSignedFirst(one).stream()
                .map(due -> "`" + due.words().words() + "` of " + SignOff.covered(due.covers()))
                .toList();
    }

    private List<SignOff> readable() {
        return stated.signed().stream().filter(SignOff::readable).toList();
    }

    private Proof proof() {
        return new Proof(stated, identity);
    }

    private Statuses statuses() {
        return new Statuses(readable(), asked(), substance, proof()::proves);
    }

    private List<Signed> signed(Statuses statuses) {
        List<SignOff> readable = readable();
        List<SignOffStatus> worth = statuses.of(readable);
        Proof proof = proof();
        List<Signed> signed = new ArrayList<>();
        for (int i = 0; i < readable.size(); i++) {
            SignOff one = readable.get(i);
            signed.add(new Signed(
                    one,
                    worth.get(i),
                    proof.proves(one),
                    worth.get(i) == SignOffStatus.SUPERSEDED
                            ? ChangedSince.list(one, stated.kept(), substance)
                            : List.of()));
        }
        return List.copyOf(signed);
    }

    /** What does not hold about them. */
    public List<Finding> findings() {
        Statuses statuses = statuses();
        List<Signed> signed = signed(statuses);
        Proof proof = proof();
        List<Finding> findings = new ArrayList<>(proof.keys());
        stated.signed().forEach(one -> findings.addAll(proof.findings(one)));
        findings.addAll(new SignerFaults(identity)
                .of(signed.stream()
                        .filter(one -> one.status() != SignOffStatus.SUPERSEDED
                                && one.status() != SignOffStatus.COVERS_NOTHING)
                        .map(Signed::signOff)
                        .toList()));
        signed.forEach(one -> told(one, findings));
        findings.addAll(stated.kept().findings(stated.signed()));
        if (signed.size() == stated.signed().size()) { // else the one that is missing may be one that cannot be read
            findings.addAll(new AskedFaults(this, statuses, signed).findings());
        }
        return findings;
    }

    private void told(Signed signed, List<Finding> findings) {
        SignOff one = signed.signOff();
        if (signed.status() == SignOffStatus.COVERS_NOTHING) {
            findings.add(Finding.warns(
                    COVERS_NOTHING,
                    "",
                    one.covers().where(),
                    "`" + one.words().characters() + "` by `" + one.by().characters() + "` covers `"
                            + one.covers().characters() + "`, and nothing is described that belongs to such a chapter",
                    "see whether another chapter was meant; what was signed once may stay where it is"));
        } else if (signed.status() == SignOffStatus.REPEATED) {
            findings.add(Finding.warns(
                    REPEATED,
                    "",
                    one.words().where(),
                    "`" + one.by().characters() + "` signed " + one.covered() + " as `"
                            + one.words().characters() + "` before, and nothing changed since",
                    "take one of the two out"));
        }
    }
}
