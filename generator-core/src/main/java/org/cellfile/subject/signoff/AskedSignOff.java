package org.cellfile.subject.signoff;

import java.util.Set;
import org.cellfile.dossier.Substance;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A sign-off that the cell asks for beyond those that are asked for everywhere. There is no way to ask for less.
 *
 * @param covers missing when it is the whole file
 * @param role that whoever signs must have; missing when any will do
 * @param proven {@code yes} when a signature is asked for and a typed name is not enough
 */
public record AskedSignOff(
        Stated<SigningWords> words, Stated<String> covers, Stated<String> role, Stated<String> proven) {

    static AskedSignOff read(Section section) {
        return new AskedSignOff(
                section.word("words", SigningWords.all())
                        .map(words -> SigningWords.of(words).orElseThrow()),
                section.textIfStated("covers"),
                section.textIfStated("role"),
                section.wordIfStated("proven", Set.of("yes")));
    }

    /** What it must cover. */
    public String covered() {
        return covers.value().orElse(Substance.WHOLE);
    }
}
