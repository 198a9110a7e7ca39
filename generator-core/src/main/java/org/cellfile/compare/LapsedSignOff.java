package org.cellfile.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Substance;
import org.cellfile.subject.signoff.SignOff;

/**
 * A sign-off that held in the older state and covers something else in the newer one.
 *
 * @param by the person's name
 * @param chapters that it covers and that are not what was signed
 * @param again the day on which the same was signed anew; empty while it was not
 */
public record LapsedSignOff(
        String covers, String words, String by, String on, List<String> chapters, Optional<String> again) {

    static List<LapsedSignOff> between(State older, State newer) {
        List<LapsedSignOff> lapsed = new ArrayList<>();
        for (SignOff signOff : older.cell().signOffs().signed()) {
            String covers = signOff.covers().characters();
            if (signOff.digest().value().isPresent()
                    && older.substance().digest(covers).equals(signOff.digest().value())
                    && !newer.substance().digest(covers).equals(signOff.digest().value())) {
                lapsed.add(new LapsedSignOff(
                        covers,
                        signOff.words().characters(),
                        older.cell().identity().nameOf(signOff.by()),
                        signOff.on().characters(),
                        chapters(covers, older.substance(), newer.substance()),
                        again(signOff, newer)));
            }
        }
        return lapsed;
    }

    /** Chapters of which the substance is another one. */
    static List<String> chapters(String covers, Substance older, Substance newer) {
        List<String> chapters = new ArrayList<>();
        older.parts().stream().map(Substance.Part::chapter).forEach(chapters::add);
        newer.parts().stream()
                .map(Substance.Part::chapter)
                .filter(chapter -> !chapters.contains(chapter))
                .forEach(chapters::add);
        return chapters.stream()
                .filter(chapter -> covers.equals(Substance.WHOLE) || covers.equals(chapter))
                .filter(chapter -> !older.digest(chapter).equals(newer.digest(chapter)))
                .toList();
    }

    private static Optional<String> again(SignOff before, State newer) {
        return newer.cell().signOffs().signed().stream()
                .filter(one -> one.covers().characters().equals(before.covers().characters())
                        && one.words().characters().equals(before.words().characters())
                        && newer.substance()
                                .digest(one.covers().characters())
                                .equals(one.digest().value()))
                .map(one -> one.on().characters())
                .findFirst();
    }
}
