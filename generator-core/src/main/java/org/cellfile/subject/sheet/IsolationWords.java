package org.cellfile.subject.sheet;

import java.util.Optional;
import java.util.Set;

/**
 * Words by which it is seen what a sentence about isolating energies does: those that the file of each language lists under
 * {@code own-steps.isolation}.
 */
final class IsolationWords {

    static final String UNLOCKING = "unlocking";
    static final String LOCKING = "locking";
    static final String ENERGISING = "energising";

    /** What is done at a lock takes a word for it and one for the lock. */
    private static final Set<String> AT_A_LOCK = Set.of(UNLOCKING, LOCKING);

    private IsolationWords() {}

    /** The word by which the sentence is seen to do what stands under the key. */
    static Optional<String> said(String sentence, String key, Wording wording) {
        Optional<String> word = Contradictions.said(sentence, "isolation." + key, wording);
        return AT_A_LOCK.contains(key)
                ? word.filter(one -> Contradictions.said(sentence, "isolation.locks", wording)
                        .isPresent())
                : word;
    }
}
