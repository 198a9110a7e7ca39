package org.cellfile.subject.verification;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.cellfile.dossier.Words;
import org.cellfile.quantity.Interval;

/**
 * What is tested of one kind of thing. It lies beside the words of the kind: {@code protocol.properties} tells the tests and what
 * is particular about each, {@code words_en.properties} how they are done.
 *
 * @param tests in the order they are done
 * @param longest the longest interval that was published, or is common
 * @param longestSource who says so, with its standing
 */
public record Protocol(List<Test> tests, Interval longest, String longestSource) {

    /**
     * One test.
     *
     * @param id as results name it
     * @param title what is tested
     * @param shift true when the operator does it at the beginning of each shift
     * @param starts true when reset or start is pressed in it, and whoever is inside would be hurt if the thing failed
     * @param periodic true when it is done by a competent person at an interval, and its results are kept
     * @param everyMode true when it is done in each mode in which the thing acts; else once
     * @param alone true when everything else that could stop the machine has to be healthy, and the path that is no safety function
     *     neutralised
     * @param reading what is read off
     * @param onlyIn sort of mode to which it belongs; empty for any
     * @param feature without which a thing has no such test; empty when every thing of the kind has it
     * @param source of the test, and of intervals named in public beside the longest
     */
    public record Test(
            String id,
            String title,
            boolean shift,
            boolean starts,
            boolean periodic,
            boolean everyMode,
            boolean alone,
            Reading reading,
            Optional<String> onlyIn,
            Optional<String> feature,
            String source,
            Words words) {

        /** How it is done on a thing. */
        public String how(Tested tested) {
            return how(tested.testPiece().map(Object::toString).orElse("–"));
        }

        /** How it is done with a test piece of that diameter. */
        String how(String testPiece) {
            return words.get("test." + id + ".how", testPiece);
        }

        /** What has to happen. */
        public String expected() {
            return words.get("test." + id + ".expected");
        }

        /** What is particular about it, in words; empty when nothing is. */
        String particulars() {
            StringBuilder words = new StringBuilder(shift ? "each shift too" : "");
            for (String more : List.of(
                    everyMode ? "in each mode in which it acts" : "",
                    onlyIn.map(sort -> "in " + sort.replace('-', ' ')).orElse(""),
                    alone ? "alone" : "",
                    reading == Reading.NONE ? "" : "read off: " + reading.words())) {
                words.append(words.isEmpty() || more.isEmpty() ? "" : "; ").append(more);
            }
            return words.toString();
        }
    }

    /** What is read off in a test. */
    public enum Reading {
        NONE("", ""),
        /** the diameter of the test piece used: that which the device has to detect */
        TEST_PIECE("test-piece", "diameter of the test piece"),
        /** the speed of the tool centre point, at most that of the mode */
        SPEED("speed", "speed of the tool centre point"),
        /** whether the machine moved, and it must not have */
        STANDS("machine", "whether the machine stands"),
        /** whether the machine moved, and it must have */
        MOVES("machine", "whether the machine moves"),
        /** the longest time between the two hands at which it started, at most that of the standard */
        SYNCHRONISM("hands-apart", "longest time between the hands");

        private final String key;
        private final String words;

        Reading(String key, String words) {
            this.key = key;
            this.words = words;
        }

        /** Under which a result states it. */
        String key() {
            return key;
        }

        String words() {
            return words;
        }

        /** True when an instrument is needed to read it. */
        boolean measured() {
            return this == SPEED || this == SYNCHRONISM;
        }

        /** As the structure of a protocol writes it. */
        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private static final String LONGEST = "longest";

    /** A protocol is asked for at every result of every test. */
    private static final Map<String, Protocol> READ = new ConcurrentHashMap<>();

    /** The protocol in a folder of the templates, with every test that a thing of the kind may have. */
    static Protocol in(String folder) {
        return READ.computeIfAbsent(folder, Protocol::read);
    }

    private static Protocol read(String folder) {
        Words structure = Words.structure(folder, "protocol");
        Words words = Words.of(folder);
        return new Protocol(
                Arrays.stream(structure.get("tests").split(" "))
                        .map(id -> test(id, structure, words))
                        .toList(),
                Interval.of(structure.get(LONGEST)).orElseThrow(),
                structure.get(LONGEST + ".source"));
    }

    /** The same with the tests of a thing that has these features. */
    Protocol with(Set<String> features) {
        return new Protocol(
                tests.stream()
                        .filter(test -> test.feature().map(features::contains).orElse(true))
                        .toList(),
                longest,
                longestSource);
    }

    private static Test test(String id, Words structure, Words words) {
        List<String> marks = List.of(structure.get(id).split(" "));
        return new Test(
                id,
                words.get("test." + id),
                marks.contains("shift"),
                marks.contains("starts"),
                marks.contains("periodic"),
                marks.contains("every-mode"),
                marks.contains("alone"),
                Arrays.stream(Reading.values())
                        .filter(reading -> marks.contains("reads-" + reading.word()))
                        .findFirst()
                        .orElse(Reading.NONE),
                rest(marks, "only-"),
                rest(marks, "if-"),
                structure.get(id + ".source"),
                words);
    }

    private static Optional<String> rest(List<String> marks, String beginning) {
        return marks.stream()
                .filter(mark -> mark.startsWith(beginning))
                .map(mark -> mark.substring(beginning.length()))
                .findFirst();
    }

    /** The test with that id. */
    public Optional<Test> test(String id) {
        return tests.stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
