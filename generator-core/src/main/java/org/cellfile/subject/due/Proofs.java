package org.cellfile.subject.due;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cellfile.subject.identity.Competence;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Instrument;

/** When the proofs of instruments and people end: a calibration, a competence. */
public final class Proofs {

    private Proofs() {}

    /**
     * The end of each.
     *
     * @param used tags of the instruments something was measured with; what was measured with no other rests on its calibration
     */
    public static List<Due> dues(Identity identity, Set<String> used) {
        List<Due> dues = new ArrayList<>();
        for (Instrument instrument : identity.instruments()) {
            if (used.contains(instrument.tag().characters())) {
                calibration(instrument, dues);
            }
        }
        latest(identity).forEach(one -> competence(one, identity, dues));
        return dues;
    }

    private static void calibration(Instrument instrument, List<Due> dues) {
        instrument
                .calibration()
                .due()
                .value()
                .ifPresent(day -> dues.add(new Due(
                        day,
                        instrument.tag().characters(),
                        "calibrate again: " + instrument.name().characters() + ", "
                                + instrument.serial().characters(),
                        "calibration certificate "
                                + instrument.calibration().certificate().characters(),
                        instrument.calibration().due().where())));
    }

    private static void competence(Competence one, Identity identity, List<Due> dues) {
        one.until()
                .value()
                .ifPresent(day -> dues.add(new Due(
                        day,
                        one.person().characters(),
                        "prove anew that " + identity.nameOf(one.person()) + " is competent for "
                                + one.subject().characters(),
                        one.proof().characters(),
                        one.until().where())));
    }

    /** Of several proofs of one person for one subject the one that holds longest. */
    private static Iterable<Competence> latest(Identity identity) {
        Map<List<String>, Competence> latest = new LinkedHashMap<>();
        for (Competence one : identity.competences()) {
            if (one.until().value().isPresent()) {
                latest.merge(
                        List.of(one.person().characters(), one.subject().characters()),
                        one,
                        (known, other) -> known.until()
                                        .value()
                                        .flatMap(day -> other.until().value().filter(day::isBefore))
                                        .isPresent()
                                ? other
                                : known);
            }
        }
        return latest.values();
    }
}
