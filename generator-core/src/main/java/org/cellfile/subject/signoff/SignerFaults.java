package org.cellfile.subject.signoff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Competence;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;

/**
 * Whether those who signed may: on that day, in that role, with that competence, and beside the others who signed the same. Asked of
 * sign-offs of what is as it was signed; what became of a person later says nothing about the others.
 */
final class SignerFaults {

    static final FindingId ROLE = new FindingId("sign-off.role-not-held");
    static final FindingId LEFT = new FindingId("sign-off.person-left");
    static final FindingId NOT_COMPETENT = new FindingId("sign-off.not-competent");
    static final FindingId BEFORE_BUILT = new FindingId("sign-off.before-built");
    static final FindingId NOT_THE_PLANT = new FindingId("sign-off.not-the-plant");
    static final FindingId CHECKED_BY_TESTER = new FindingId("sign-off.checked-by-tester");
    static final FindingId RELEASED_BY_TESTER = new FindingId("sign-off.released-by-tester");

    /** The chapter for which who measures stops is competent. */
    private static final String STOPS = "stop-evidence";

    private final Identity identity;
    private final List<Finding> findings = new ArrayList<>();

    SignerFaults(Identity identity) {
        this.identity = identity;
    }

    /**
     * What they may not.
     *
     * @param current in the order written
     */
    List<Finding> of(List<SignOff> current) {
        for (int i = 0; i < current.size(); i++) {
            SignOff one = current.get(i);
            identity.person(one.by()).ifPresent(person -> mayNot(one, person));
            one.on().value().ifPresent(day -> onThatDay(one, day));
            notAlone(one, current.subList(0, i));
        }
        return findings;
    }

    private void mayNot(SignOff one, Person person) {
        if (person.roles().stream()
                .noneMatch(role -> role.value().equals(one.role().value()))) {
            refuse(
                    ROLE,
                    one.role(),
                    "`" + one.by().characters() + "` signed as `" + one.role().characters()
                            + "`, and has no such role ("
                            + person.tag().where().position() + ")",
                    "roles this person has: "
                            + String.join(
                                    ", ",
                                    person.roles().stream()
                                            .map(role -> "`" + role.characters() + "`")
                                            .toList()));
        }
        Optional<LocalDate> left = person.left().value();
        if (left.filter(last -> one.on().value().filter(last::isBefore).isPresent())
                .isPresent()) {
            refuse(
                    LEFT,
                    one.on(),
                    "`" + one.by().characters() + "` is said to have signed on "
                            + one.on().characters() + ", after the last day there, " + left.get() + " ("
                            + person.left().where().position() + ")",
                    "have somebody sign who was there on that day");
        }
        Stated<String> plant = identity.facts().operator();
        if (one.says(SigningWords.RELEASED)
                && plant.value().isPresent()
                && person.employer().value().isPresent()
                && !person.employer().value().equals(plant.value())) {
            refuse(
                    NOT_THE_PLANT,
                    one.by(),
                    "`" + one.by().characters() + "`, employed by `"
                            + person.employer().characters()
                            + "`, released " + one.covered() + " for use; the cell is run by `" + plant.characters()
                            + "` ("
                            + plant.where().position() + ")",
                    "have it released by somebody of the plant: nobody else can let its people use it");
        }
    }

    private void onThatDay(SignOff one, LocalDate day) {
        if (one.says(SigningWords.TESTED) && !competent(one, day)) {
            boolean stops = one.covers().characters().equals(STOPS);
            refuse(
                    NOT_COMPETENT,
                    one.by(),
                    "nobody states that `" + one.by().characters() + "`, who signed " + one.covered()
                            + " as `tested`, was competent for function tests" + (stops ? " or stop measurement" : "")
                            + " on " + day,
                    "state under `competences` since when and by what proof, if it was so; else have somebody competent test"
                            + " and sign");
        }
        Stated<LocalDate> built = identity.dates().built();
        built.value()
                .filter(day::isBefore)
                .ifPresent(
                        first -> refuse(
                                BEFORE_BUILT,
                                one.on(),
                                "this was signed on " + day + ", before the cell was built, on " + first + " ("
                                        + built.where().position() + ")",
                                "see which of the two dates is written wrongly; what did not stand yet could not be signed for"));
    }

    /** Who measures stops is competent for that chapter alone. */
    private boolean competent(SignOff one, LocalDate day) {
        return identity.competent(one.by(), Competence.FUNCTION_TESTS, day)
                || (one.covers().characters().equals(STOPS)
                        && identity.competent(one.by(), Competence.STOP_MEASUREMENT, day));
    }

    /** Whichever of the two was written later is told. */
    private void notAlone(SignOff one, List<SignOff> before) {
        pair(one, before, SigningWords.CHECKED)
                .ifPresent(other -> told(
                        CHECKED_BY_TESTER,
                        one,
                        other,
                        who(one, other) + " both tested and checked " + common(one, other),
                        "have somebody else check: nobody finds the own mistakes"));
        pair(one, before, SigningWords.RELEASED)
                .ifPresent(other -> told(
                        RELEASED_BY_TESTER,
                        one,
                        other,
                        who(one, other) + " both tested and released " + common(one, other),
                        "have it released by somebody at the plant who did not test"));
    }

    private Optional<SignOff> pair(SignOff one, List<SignOff> before, SigningWords words) {
        SigningWords due = one.says(words) ? SigningWords.TESTED : words;
        if (!one.says(words) && !one.says(SigningWords.TESTED)) {
            return Optional.empty();
        }
        return before.stream()
                .filter(other -> other.says(due) && samePerson(one, other) && overlap(one, other))
                .findFirst();
    }

    /** Sign-offs are printed with names: who is listed twice under one name is one person to every reader. */
    private boolean samePerson(SignOff one, SignOff other) {
        return other.by().value().equals(one.by().value())
                || identity.nameOf(one.by()).equals(identity.nameOf(other.by()));
    }

    private String who(SignOff one, SignOff other) {
        String tag = "`" + one.by().characters() + "`";
        return other.by().value().equals(one.by().value())
                ? tag
                : tag + " and `" + other.by().characters() + "`, under `people` both " + identity.nameOf(one.by())
                        + ", are one person to every reader, who";
    }

    private static boolean overlap(SignOff one, SignOff other) {
        return whole(one)
                || whole(other)
                || one.covers().value().equals(other.covers().value());
    }

    private static boolean whole(SignOff one) {
        return one.covers().characters().equals(Substance.WHOLE);
    }

    private static String common(SignOff one, SignOff other) {
        return (whole(one) ? other : one).covered();
    }

    private void told(FindingId id, SignOff one, SignOff other, String sentence, String help) {
        Span elsewhere = other.by().where();
        refuse(id, one.by(), sentence + " (see also " + elsewhere.position() + ")", help);
    }

    private void refuse(FindingId id, Stated<?> at, String sentence, String help) {
        findings.add(Finding.refuses(id, "", at.where(), sentence, help));
    }
}
