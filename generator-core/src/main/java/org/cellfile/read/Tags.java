package org.cellfile.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.source.Stated;

/** The tags of a cell: what each names, and who refers to it. */
final class Tags {

    static final FindingId MALFORMED = new FindingId("tag.malformed");
    static final FindingId REPEATED = new FindingId("tag.repeated");
    static final FindingId LOOK_ALIKE = new FindingId("tag.look-alike");
    static final FindingId UNKNOWN = new FindingId("tag.unknown");
    static final FindingId ANOTHER_SORT = new FindingId("tag.another-sort");

    /** More places than these are only counted. */
    private static final int MOST_PLACES = 3;

    private record Named(String sort, Stated<String> tag) {}

    /** Somebody means a thing of one of these sorts. */
    private record Meant(List<String> sorts, Stated<String> tag) {

        String words() {
            return String.join(" or ", sorts);
        }

        String due() {
            return sorts.stream().map(Tags::article).collect(Collectors.joining(" or "));
        }
    }

    private final Map<String, Named> named = new TreeMap<>();
    private final Map<String, Named> bySkeleton = new HashMap<>();
    private final List<Meant> references = new ArrayList<>();
    private final Set<String> refused = new HashSet<>();
    private final Set<String> nameless = new HashSet<>();
    private final Findings findings;

    Tags(Findings findings) {
        this.findings = findings;
    }

    /** A thing of the cell gets its tag. */
    void define(String sort, Stated<String> stated) {
        if (stated.value().isEmpty()) {
            nameless.add(sort);
        }
        stated.value().ifPresent(tag -> {
            Named one = new Named(sort, stated);
            if (!wellFormed(tag, stated)) {
                refused.add(tag);
                return;
            }
            Named same = named.putIfAbsent(tag, one);
            if (same != null) {
                refuse(
                        REPEATED,
                        stated,
                        "`" + tag + "` names " + article(sort) + " here and " + article(same.sort) + " at "
                                + same.tag.where().position(),
                        "give each thing a tag of its own, as on the drawings of the cell");
                return;
            }
            Named alike = bySkeleton.putIfAbsent(skeleton(tag), one);
            if (alike != null) {
                refuse(
                        LOOK_ALIKE,
                        stated,
                        "`" + tag + "` is easily read as `" + alike.tag.characters() + "`, the tag of "
                                + article(alike.sort) + " at "
                                + alike.tag.where().position(),
                        "choose tags that nobody at the machine can take for one another");
            }
        });
    }

    /**
     * A part of a thing gets a tag that is unique only within the thing.
     *
     * @param siblings the tags of the parts before it; this one is added
     */
    void defineWithin(Map<String, Stated<String>> siblings, Stated<String> stated) {
        stated.value().filter(tag -> wellFormed(tag, stated)).ifPresent(tag -> {
            Stated<String> same = siblings.putIfAbsent(tag, stated);
            if (same != null) {
                refuse(
                        REPEATED,
                        stated,
                        "`" + tag + "` is the tag of another part of the same list as well, at "
                                + same.where().position(),
                        "give each a tag of its own within the list");
            }
        });
    }

    private boolean wellFormed(String tag, Stated<String> stated) {
        int[] strange = tag.codePoints()
                .filter(point -> !(point == '-' || (point < 128 && Character.isLetterOrDigit(point))))
                .toArray();
        if (strange.length > 0) {
            refuse(
                    MALFORMED,
                    stated,
                    "`" + tag + "` holds " + described(strange[0]) + ", which a tag may not",
                    "write tags with the letters A to Z, digits and hyphens, so that no two can look alike");
            return false;
        }
        if (!tag.isEmpty() && Character.isLetter(tag.charAt(0)) && tag.length() <= 40) {
            return true;
        }
        refuse(
                MALFORMED,
                stated,
                "`" + tag + "` is not a tag",
                "begin with a letter; letters A to Z, digits and hyphens may follow, forty characters at most");
        return false;
    }

    private static String described(int point) {
        if (point == ' ') {
            return "a space";
        }
        return "`" + Character.toString(point) + "` (U+" + String.format(Locale.ROOT, "%04X", point) + ", "
                + String.valueOf(Character.getName(point)).toLowerCase(Locale.ROOT) + ")";
    }

    /** What is left of a tag when letters, digits and cases that look alike are the same. */
    private static String skeleton(String tag) {
        return tag.toLowerCase(Locale.ROOT)
                .replace("rn", "m")
                .replace('0', 'o')
                .replace('1', 'l')
                .replace('i', 'l')
                .replace('5', 's')
                .replace('8', 'b')
                .replace('2', 'z')
                .replace("-", "");
    }

    /** Something refers to a thing of one of some sorts. */
    void refer(List<String> sorts, Stated<String> stated) {
        if (stated.value().isPresent()) {
            references.add(new Meant(sorts, stated));
        }
    }

    /**
     * Finds the references that lead nowhere; to be called when everything was read. A thing that is meant in many places, as one
     * with a history of tests is, is missed once.
     */
    void resolve() {
        Map<Map.Entry<List<String>, String>, List<Meant>> meant = new LinkedHashMap<>();
        for (Meant reference : references) {
            meant.computeIfAbsent(Map.entry(reference.sorts, reference.tag.characters()), key -> new ArrayList<>())
                    .add(reference);
        }
        meant.values().forEach(alike -> {
            alike.sort(Comparator.comparing(reference -> reference.tag.where()));
            resolve(alike.get(0))
                    .map(finding -> alike.size() == 1 ? finding : finding.because(List.of(elsewhere(alike))))
                    .ifPresent(findings::add);
        });
    }

    private static String elsewhere(List<Meant> alike) {
        int others = alike.size() - 1;
        return "named as well at "
                + alike.stream()
                        .skip(1)
                        .limit(others > MOST_PLACES + 1 ? MOST_PLACES : others)
                        .map(reference -> reference.tag.where().position())
                        .collect(Collectors.joining(", "))
                + (others > MOST_PLACES + 1 ? " and " + (others - MOST_PLACES) + " more places" : "");
    }

    private Optional<Finding> resolve(Meant reference) {
        String tag = reference.tag.value().orElse("");
        Named meant = named.get(tag);
        if (meant == null) {
            List<String> ofSort = named.entrySet().stream()
                    .filter(entry -> reference.sorts.contains(entry.getValue().sort))
                    .map(Map.Entry::getKey)
                    .toList();
            if (ofSort.isEmpty()
                    || refused.contains(tag)
                    || reference.sorts.stream().anyMatch(nameless::contains)) {
                // The thing it means may be one whose own tag was refused, and that was said there.
                return Optional.empty();
            }
            return Optional.of(refused(
                    UNKNOWN,
                    reference.tag,
                    "there is no " + reference.words() + " `" + tag + "`",
                    "described in this cell: " + Nearest.listed(tag, ofSort)));
        }
        if (!reference.sorts.contains(meant.sort)) {
            return Optional.of(refused(
                    ANOTHER_SORT,
                    reference.tag,
                    "`" + tag + "` is " + article(meant.sort) + " ("
                            + meant.tag.where().position() + "), and " + reference.due() + " is due here",
                    ""));
        }
        return Optional.empty();
    }

    private static String article(String sort) {
        return ("aeiou".indexOf(sort.charAt(0)) >= 0 ? "an " : "a ") + sort;
    }

    private void refuse(FindingId id, Stated<String> at, String sentence, String help) {
        findings.add(refused(id, at, sentence, help));
    }

    private static Finding refused(FindingId id, Stated<String> at, String sentence, String help) {
        return Finding.refuses(id, at.characters(), at.where(), sentence, help);
    }
}
