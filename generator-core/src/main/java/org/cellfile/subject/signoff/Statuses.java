package org.cellfile.subject.signoff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.cellfile.dossier.Substance;

/** What each of several sign-offs is worth. */
final class Statuses {

    private final List<Asked> asked;
    private final Substance now;
    private final Predicate<SignOff> proven;

    /** The first day on which each sign-off asked for was there, for those that are. */
    private final Map<Asked, LocalDate> met = new LinkedHashMap<>();

    /**
     * Of the sign-offs of a cell.
     *
     * @param asked in the order in which the words are said
     */
    Statuses(List<SignOff> signed, List<Asked> asked, Substance now, Predicate<SignOff> proven) {
        this.asked = asked;
        this.now = now;
        this.proven = proven;
        // What is said first is settled first: whether a sign-off came too early depends on those before it alone.
        for (Asked one : asked) {
            signed.stream()
                    .filter(this::isOfNow)
                    .filter(one::metBy)
                    .filter(signOff -> toBeSignedFirst(signOff).isEmpty())
                    .flatMap(signOff -> signOff.on().value().stream())
                    .min(LocalDate::compareTo)
                    .ifPresent(day -> met.put(one, day));
        }
    }

    /** Each with its status, in the order given. */
    List<SignOffStatus> of(List<SignOff> signed) {
        Set<List<Object>> before = new HashSet<>();
        List<SignOffStatus> statuses = new ArrayList<>();
        for (SignOff one : signed) {
            SignOffStatus status = status(one);
            boolean counts = status == SignOffStatus.VALID || status == SignOffStatus.NOT_ASKED_FOR;
            if (counts && before.contains(said(one, proven.test(one)))) {
                status = SignOffStatus.REPEATED;
            } else if (counts) {
                before.add(said(one, false));
                before.add(said(one, proven.test(one))); // a proven one says as much as a typed one, and more
            }
            statuses.add(status);
        }
        return statuses;
    }

    private static List<Object> said(SignOff one, boolean proven) {
        return List.of(
                one.by().characters(),
                one.words().characters(),
                one.covers().characters(),
                one.role().characters(),
                proven);
    }

    private SignOffStatus status(SignOff one) {
        Optional<String> digest = now.digest(one.covers().characters());
        if (digest.isEmpty()) {
            return SignOffStatus.COVERS_NOTHING;
        }
        if (!isOfNow(one)) {
            return SignOffStatus.SUPERSEDED;
        }
        if (!toBeSignedFirst(one).isEmpty()) {
            return SignOffStatus.TOO_EARLY;
        }
        return asked.stream().anyMatch(due -> due.metBy(one)) ? SignOffStatus.VALID : SignOffStatus.NOT_ASKED_FOR;
    }

    private boolean isOfNow(SignOff one) {
        return now.digest(one.covers().characters()).equals(one.digest().value());
    }

    /** What had to be signed before, and was not by that day; the same day is in order. */
    List<Asked> toBeSignedFirst(SignOff one) {
        return asked.stream()
                .filter(due -> one.words()
                                .value()
                                .filter(words -> words.follows(due.words()))
                                .isPresent()
                        && due.within(one.covers().characters()))
                .filter(due -> firstDay(due)
                        .filter(day -> one.on().value().filter(day::isAfter).isEmpty())
                        .isEmpty())
                .toList();
    }

    /** The first day on which a sign-off asked for was there; empty when it is not. */
    Optional<LocalDate> firstDay(Asked due) {
        return Optional.ofNullable(met.get(due));
    }
}
