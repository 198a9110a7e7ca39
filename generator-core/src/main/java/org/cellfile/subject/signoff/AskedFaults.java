package org.cellfile.subject.signoff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.subject.identity.Identity;

/** Sign-offs that are asked for and not there, or not as asked: each cause once. */
final class AskedFaults {

    static final FindingId MISSING = new FindingId("sign-off.missing");
    static final FindingId SUPERSEDED = new FindingId("sign-off.superseded");
    static final FindingId TOO_EARLY = new FindingId("sign-off.too-early");
    static final FindingId NOT_PROVEN = new FindingId("sign-off.not-proven");
    static final FindingId OF_NOTHING = new FindingId("sign-off.asked-of-nothing");

    private final Signing signing;
    private final Statuses statuses;
    private final List<Signed> signed;
    private final List<Finding> findings = new ArrayList<>();

    /** Superseded ones that were not signed anew, those of the same state together. */
    private final Map<List<String>, Lapsed> superseded = new LinkedHashMap<>();

    /**
     * What one change voided.
     *
     * @param tooEarly what is said of sign-offs that come after these
     */
    private record Lapsed(Set<Signed> signed, Set<String> tooEarly) {}

    AskedFaults(Signing signing, Statuses statuses, List<Signed> signed) {
        this.signing = signing;
        this.statuses = statuses;
        this.signed = signed;
    }

    List<Finding> findings() {
        signing.asked().forEach(this::look);
        superseded.values().forEach(this::superseded);
        return findings.stream().distinct().toList();
    }

    private void look(Asked due) {
        if (signing.substance().digest(due.covers()).isEmpty()) {
            due.where()
                    .ifPresent(where -> findings.add(Finding.refuses(
                            OF_NOTHING,
                            "",
                            where,
                            "`" + due.words().words() + "` is asked for the chapter `" + due.covers()
                                    + "`, and nothing is described that belongs to such a chapter",
                            "name `" + Substance.WHOLE + "` or one of the chapters `"
                                    + signing.substance().parts().stream()
                                            .map(Substance.Part::chapter)
                                            .collect(Collectors.joining("`, `"))
                                    + "`")));
            return;
        }
        List<Signed> valid = given(due, SignOffStatus.VALID);
        if (!valid.isEmpty()) {
            // A signature that does not hold is told where it stands.
            if (due.proven()
                    && valid.stream()
                            .allMatch(one -> one.signOff().signature().value().isEmpty())) {
                notProven(due, valid.get(valid.size() - 1).signOff());
            }
            return;
        }
        List<Signed> early = given(due, SignOffStatus.TOO_EARLY);
        early.stream().map(Signed::signOff).filter(this::overtaken).forEach(one -> tooEarly(due, one));
        if (early.isEmpty()) {
            given(due, SignOffStatus.SUPERSEDED).stream()
                    .max(Comparator.comparing(one -> one.signOff().on().value().orElseThrow()))
                    .ifPresentOrElse(one -> lapsed(due, one), () -> missing(due));
        }
    }

    private List<Signed> given(Asked due, SignOffStatus status) {
        return signed.stream()
                .filter(one -> one.status() == status && due.metBy(one.signOff()))
                .toList();
    }

    /** True when something was signed after it that comes first; where that is not signed at all, it is told there. */
    private boolean overtaken(SignOff one) {
        return statuses.toBeSignedFirst(one).stream()
                .anyMatch(first -> statuses.firstDay(first).isPresent());
    }

    /** Sign-offs that came before something that is not there, each told beside the first such thing. */
    private List<String> alsoTooEarly(Asked due) {
        return signed.stream()
                .filter(one -> one.status() == SignOffStatus.TOO_EARLY)
                .map(Signed::signOff)
                .filter(one -> !overtaken(one)
                        && statuses.toBeSignedFirst(one).get(0).equals(due)
                        && signing.asked().stream()
                                .anyMatch(other -> other.metBy(one)
                                        && given(other, SignOffStatus.VALID).isEmpty()))
                .map(one -> "`" + one.words().characters() + "` by `" + one.by().characters() + "` ("
                        + one.words().where().position() + ") comes after it, and has to be signed again then")
                .toList();
    }

    private void lapsed(Asked due, Signed one) {
        Lapsed together = superseded.computeIfAbsent(
                List.of(
                        one.signOff().covers().characters(),
                        one.signOff().digest().characters()),
                any -> new Lapsed(new LinkedHashSet<>(), new LinkedHashSet<>()));
        together.signed().add(one);
        together.tooEarly().addAll(alsoTooEarly(due));
    }

    private void superseded(Lapsed lapsed) {
        List<Signed> together = List.copyOf(lapsed.signed());
        SignOff first = together.get(0).signOff();
        List<String> because = new ArrayList<>();
        together.stream()
                .skip(1)
                .map(Signed::signOff)
                .forEach(other -> because.add("so is `" + other.words().characters() + "` by `"
                        + other.by().characters() + "` ("
                        + other.words().where().position() + ")"));
        because.addAll(lapsed.tooEarly());
        because.addAll(together.get(0).since());
        findings.add(Finding.barsRelease(
                        SUPERSEDED,
                        "",
                        first.digest().where(),
                        "`" + first.words().characters() + "` of " + first.covered() + " by `"
                                + first.by().characters() + "` on "
                                + first.on().characters() + " is superseded by a change",
                        "see what the change touches, have that tested and checked again, and have it signed anew")
                .because(because));
    }

    private void tooEarly(Asked due, SignOff one) {
        List<String> because = new ArrayList<>(statuses.toBeSignedFirst(one).stream()
                .map(first -> "`" + first.words().words() + "` of " + SignOff.covered(first.covers())
                        + statuses.firstDay(first)
                                .map(LocalDate::toString)
                                .map(day -> " was signed on " + day)
                                .orElse(" is not signed as it is now"))
                .toList());
        because.addAll(alsoTooEarly(due));
        findings.add(Finding.barsRelease(
                        TOO_EARLY,
                        "",
                        one.on().where(),
                        "`" + one.words().characters() + "` of " + one.covered() + " by `"
                                + one.by().characters() + "` on " + one.on().characters()
                                + " came before what has to be signed first",
                        "have it signed again after that; the same day is in order")
                .because(because));
    }

    private void notProven(Asked due, SignOff one) {
        findings.add(Finding.barsRelease(
                NOT_PROVEN,
                "",
                one.by().where(),
                "`" + one.words().characters() + "` of " + one.covered() + " by `"
                        + one.by().characters() + "` is typed, not proven, and a signature is asked for ("
                        + due.where().map(Span::position).orElse("") + ")",
                "have it signed with a key (`sign` with `--key-file`)"));
    }

    private void missing(Asked due) {
        Identity identity = signing.identity();
        Supplier<String> who = () -> switch (due.words()) {
            case TESTED -> "somebody competent for function tests";
            case CHECKED -> "somebody other than who tested";
            case RELEASED -> "somebody of " + identity.facts().operator().characters() + " who did not test";
            case APPROVED -> "whoever is to approve";
            case NOTED -> "whoever is to take note";
        };
        Optional<String> role = due.role().map(name -> " in the role `" + name + "`");
        findings.add(Finding.barsRelease(
                        MISSING,
                        "",
                        signing.stated().where().orElse(identity.where()),
                        "nobody signed " + SignOff.covered(due.covers()) + " as `"
                                + due.words().words() + "`"
                                + role.orElse("")
                                + due.where()
                                        .map(where -> ", as is asked for at " + where.position())
                                        .orElse(""),
                        "have " + who.get() + " sign" + role.orElse("") + " (`sign`) when that has been done")
                .because(alsoTooEarly(due)));
    }
}
