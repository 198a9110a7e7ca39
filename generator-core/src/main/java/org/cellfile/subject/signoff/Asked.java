package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Substance;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/**
 * A sign-off without which nothing is released.
 *
 * @param covers the whole file or a chapter
 * @param role that whoever signs must have; empty when any will do
 * @param proven true when a signature is asked for and a typed name is not enough
 * @param where it is asked for; empty where it is so of every cell
 */
public record Asked(SigningWords words, String covers, Optional<String> role, boolean proven, Optional<Span> where) {

    /** Of every cell (common practice): whoever tested, somebody else who checked, and the plant put their names to the whole. */
    private static final List<SigningWords> EVERYWHERE =
            List.of(SigningWords.TESTED, SigningWords.CHECKED, SigningWords.RELEASED);

    /** What is asked of a cell: of every cell, raised by what the cell asks for itself. */
    static List<Asked> all(List<AskedSignOff> policy) {
        List<Asked> own = policy.stream()
                .filter(one -> one.words().value().isPresent())
                .map(Asked::of)
                .distinct()
                .toList();
        List<Asked> all = new ArrayList<>();
        EVERYWHERE.stream()
                .filter(words -> own.stream()
                        .noneMatch(one -> one.words() == words && one.covers().equals(Substance.WHOLE)))
                .forEach(
                        words -> all.add(new Asked(words, Substance.WHOLE, Optional.empty(), false, Optional.empty())));
        all.addAll(own);
        all.sort(Comparator.comparing(Asked::words)); // sorting is stable: in the order stated where words are the same
        return List.copyOf(all);
    }

    private static Asked of(AskedSignOff stated) {
        Stated<SigningWords> words = stated.words();
        return new Asked(
                words.value().orElseThrow(),
                stated.covered(),
                stated.role().value(),
                stated.proven().value().isPresent(),
                Optional.of(words.where()));
    }

    /** True when a sign-off of what is as it was signed is the one asked for; that of the whole file stands for each chapter. */
    boolean metBy(SignOff one) {
        return one.says(words)
                && (one.covers().characters().equals(covers)
                        || one.covers().characters().equals(Substance.WHOLE))
                && role.filter(due -> !due.equals(one.role().characters())).isEmpty();
    }

    /** True when it is part of what is covered. */
    boolean within(String covered) {
        return covered.equals(Substance.WHOLE) || covered.equals(covers);
    }
}
