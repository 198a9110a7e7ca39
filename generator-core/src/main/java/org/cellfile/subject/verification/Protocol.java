package org.cellfile.subject.verification;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cellfile.dossier.Words;

/**
 * What is tested of one kind of thing. It lies beside the words of the kind: {@code protocol.properties} tells the tests and what
 * is particular about each, {@code words_en.properties} how they are done.
 *
 * @param tests in the order they are done
 */
public record Protocol(List<Test> tests) {

    /**
     * One test.
     *
     * @param id as results name it
     * @param title what is tested
     * @param shift true when the operator does it at the beginning of each shift
     * @param periodic true when it is done by a competent person at an interval, and its results are kept
     * @param everyMode true when it is done in each mode in which the thing acts; else once
     * @param alone true when everything else that could stop the machine has to be healthy, and the path that is no safety function
     *     neutralised
     * @param reading what is read off
     * @param source of the test and of the intervals named in public
     */
    public record Test(
            String id,
            String title,
            boolean shift,
            boolean periodic,
            boolean everyMode,
            boolean alone,
            Reading reading,
            String source,
            Words words) {

        /** How it is done on a thing. */
        public String how(Tested tested) {
            return words.get(
                    "test." + id + ".how",
                    tested.testPiece().map(Object::toString).orElse("–"));
        }

        /** What has to happen. */
        public String expected() {
            return words.get("test." + id + ".expected");
        }
    }

    /** What is read off in a test. */
    public enum Reading {
        NONE,
        /** the diameter of the test piece used: that which the device has to detect */
        TEST_PIECE,
        /** the speed of the tool centre point, at most that of the mode */
        SPEED,
        /** whether the machine moved, and it must not have */
        STANDS,
        /** whether the machine moved, and it must have */
        MOVES,
        /** the longest time between the two hands at which it started, at most that of the standard */
        SYNCHRONISM;

        /** As the structure of a protocol writes it. */
        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The protocol in a folder of the templates. */
    static Protocol in(String folder) {
        Words structure = Words.structure(folder, "protocol");
        Words words = Words.of(folder);
        return new Protocol(Arrays.stream(structure.get("tests").split(" "))
                .map(id -> test(id, structure, words))
                .toList());
    }

    private static Test test(String id, Words structure, Words words) {
        List<String> marks = List.of(structure.get(id).split(" "));
        return new Test(
                id,
                words.get("test." + id),
                marks.contains("shift"),
                marks.contains("periodic"),
                marks.contains("every-mode"),
                marks.contains("alone"),
                Arrays.stream(Reading.values())
                        .filter(reading -> marks.contains("reads-" + reading.word()))
                        .findFirst()
                        .orElse(Reading.NONE),
                structure.get(id + ".source"),
                words);
    }

    /** The test with that id. */
    public Optional<Test> test(String id) {
        return tests.stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
