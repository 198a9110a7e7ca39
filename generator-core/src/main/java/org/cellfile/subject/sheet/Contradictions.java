package org.cellfile.subject.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.sheet.Part.Line;

/**
 * What in a step of the plant's own goes against a derived one, as far as words tell it: each language says by which words it is
 * known. A clause that forbids, denies or reports goes against nothing. The rules are common practice.
 */
final class Contradictions {

    static final FindingId CONTRADICTS = new FindingId("sheet.step-contradicts");

    /** Steps that look whether anybody is inside and whether the doors are closed: the cell is not set going before them. */
    private static final Set<String> LOOKING = Set.of("nobody", "out", "closed", "all-closed");

    /** Steps that are done before anybody goes in. */
    private static final Set<String> FIRST_DONE = Set.of("stop", "selector", "pendant");

    /** Parts during which the cell stands, and nobody presses reset or start. */
    private static final Set<String> STANDING = Set.of("after-stop.find", "after-stop.clear");

    static final Pattern SENTENCE = Pattern.compile("(?<=[.!?;:])\\s+");

    /** A condition does not forbid what follows it, as in {@code if it does not close, bridge it}. */
    private static final Pattern CLAUSE = Pattern.compile(",\\s+");

    /** In the words a language lists: some others may stand here. */
    private static final String GAP = "…";

    /** In the words a language lists: a safeguard stands here, in words or by its tag. */
    private static final String SAFEGUARD = "~";

    private static final String MARKED = "{" + SAFEGUARD;

    private final SheetSort sort;
    private final PostedCell cell;
    private final Findings findings;

    Contradictions(SheetSort sort, PostedCell cell, Findings findings) {
        this.sort = sort;
        this.cell = cell;
        this.findings = findings;
    }

    /**
     * Holds a step against the mode the cell is in while the sheet is followed, and against the derived steps around it.
     *
     * @param step as it stands in the language of the wording
     * @param part it belongs to
     * @param ahead derived steps behind which it stands
     * @param behind derived steps before which it stands
     */
    void hold(Stated<String> step, Part part, List<Line> ahead, List<Line> behind, Wording wording) {
        Optional<Mode> mode = sort.mode().flatMap(cell::mode);
        mode.ifPresent(one -> speeds(step, one, wording));
        for (String sentence : SENTENCE.split(marked(step.characters()), -1)) {
            said(sentence, "defeating", wording)
                    .ifPresent(word -> add(
                            step,
                            "`" + word + "` in this step puts a safeguard out of action, which every sheet forbids",
                            "take the step off the sheet; what has to be bypassed for a time is written into the bypass"
                                    + " register, with what takes its place"));
            if (sort.mode().isPresent()) {
                said(sentence, "entering", wording).ifPresent(word -> entering(step, word, mode, ahead, behind));
                said(sentence, "starting", wording).ifPresent(word -> starting(step, word, part, behind));
            } else {
                Standstill.against(sort, sentence, part, ahead, behind, wording)
                        .ifPresent(against -> add(step, against.sentence(), against.help()));
            }
        }
        if (part.sign().kind() == Kind.EMERGENCY && !behind.isEmpty()) {
            add(
                    step,
                    "in an emergency nothing is done before the step `"
                            + behind.get(0).id() + "`",
                    "leave out `before`, so that it stands behind the derived steps");
        }
    }

    private void entering(Stated<String> step, String word, Optional<Mode> mode, List<Line> ahead, List<Line> behind) {
        // Who goes in before everybody comes out is inside as the mode has it.
        Optional<String> before = behind.stream()
                .map(Line::id)
                .filter(id -> FIRST_DONE.contains(id) || LOOKING.contains(id))
                .findFirst()
                .filter(FIRST_DONE::contains);
        Optional<String> after = first(ahead, LOOKING);
        if (mode.filter(one -> one.inside() == 0).isPresent()) {
            add(
                    step,
                    "`" + word + "` in this step brings somebody inside, and in the mode `"
                            + mode.get().tag().characters() + "` nobody is",
                    "write it on the sheet of a mode in which somebody may be inside, or say in the same clause"
                            + " that it is forbidden");
        } else if (before.isPresent()) {
            add(
                    step,
                    "`" + word + "` in this step brings somebody inside before the step `" + before.get()
                            + "`, without which the robot may move as in automatic",
                    "leave out `before`, so that it stands behind the derived steps");
        } else if (after.isPresent()) {
            add(
                    step,
                    "`" + word + "` in this step brings somebody inside after the step `" + after.get()
                            + "`, by which one saw that nobody is",
                    "write it into a part in which somebody may be inside, or before that step");
        }
    }

    private void starting(Stated<String> step, String word, Part part, List<Line> behind) {
        if (STANDING.contains(sort.id() + "." + part.id())) {
            add(
                    step,
                    "`" + word
                            + "` in this step sets the cell going while the cause of the stop is looked for or taken away",
                    "write it into the part `restart`, behind the derived steps");
            return;
        }
        first(behind, LOOKING)
                .ifPresent(look -> add(
                        step,
                        "`" + word + "` in this step sets the cell going before the step `" + look
                                + "`, by which one looks first",
                        "leave out `before`, so that it stands behind the derived steps"));
    }

    private static Optional<String> first(List<Line> lines, Set<String> ids) {
        return lines.stream().map(Line::id).filter(ids::contains).findFirst();
    }

    private void speeds(Stated<String> step, Mode mode, Wording wording) {
        mode.speedLimit()
                .value()
                .ifPresent(limit -> SpokenSpeeds.in(step.characters(), wording.language()).stream()
                        .filter(one -> one.speed().compareTo(limit) > 0)
                        .forEach(one -> add(
                                step,
                                "this step speaks of " + one.words() + ", and the mode `"
                                        + mode.tag().characters() + "` allows "
                                        + mode.speedLimit().characters() + " at most ("
                                        + mode.speedLimit().where().position() + ")",
                                "leave the speed out; the sheet tells the limit of its mode where it counts")));
    }

    /** The first such word in a clause that neither forbids it nor goes on with what the clause before it forbids. */
    static Optional<String> said(String sentence, String key, Wording wording) {
        boolean forbidden = false;
        for (String clause : CLAUSE.split(sentence, -1)) {
            Optional<String> word = word(clause, key, "", wording);
            forbidden |= word(clause, "unless", "(?!\\p{L})", wording).isPresent();
            if (word.isPresent() && !forbidden) {
                return word.map(found -> found.replace(MARKED, "{"));
            }
            forbidden &= word.isPresent();
        }
        return Optional.empty();
    }

    /** The words of the clause that are among those the language lists under the key. */
    private static Optional<String> word(String clause, String key, String end, Wording wording) {
        return Arrays.stream(wording.shared("own-steps." + key).split(",", -1))
                .map(String::strip)
                .filter(listed -> !listed.isEmpty())
                .map(listed -> listed.contains(GAP) || listed.contains(SAFEGUARD)
                        ? apart(listed, wording)
                        : "(?<!\\p{L})" + Pattern.quote(listed) + (end.isEmpty() ? "\\p{L}*" : end))
                .map(pattern -> Pattern.compile("(?iu)" + pattern).matcher(clause))
                .filter(Matcher::find)
                .map(Matcher::group)
                .findFirst();
    }

    /** Words that stand apart, as in {@code schalten Sie den Scanner ab}. */
    private static String apart(String listed, Wording wording) {
        StringBuilder pattern = new StringBuilder();
        for (String part : listed.split("\\s+", -1)) {
            boolean first = pattern.isEmpty();
            if (part.equals(GAP)) {
                pattern.append("(?:\\s+\\S+){0,6}?");
            } else if (part.equals(SAFEGUARD)) {
                // Behind a preposition it is only a place, as in: remove dust from the scanner.
                pattern.append(first ? "" : "(?:\\s+(?!(?:" + any("beside", wording) + ")\\s)\\S+){0,3}?\\s+")
                        .append("(?:" + any("safeguards", wording) + "|" + Pattern.quote(MARKED) + "\\S*})")
                        .append("(?:\\s+\\S+){0,4}?");
            } else {
                pattern.append(first ? "" : "\\s+").append(letters(part));
            }
        }
        return "(?<!\\p{L})" + pattern + "(?!\\p{L})";
    }

    /** The step with a mark at every tag of a safeguard. */
    private String marked(String step) {
        String marked = step;
        for (Guarding safeguard : cell.safeguards()) {
            marked = marked.replace("{" + safeguard.tag() + "}", MARKED + safeguard.tag() + "}");
        }
        return marked;
    }

    private static String any(String key, Wording wording) {
        return Arrays.stream(wording.shared("own-steps." + key).split(",", -1))
                .map(word -> Arrays.stream(word.strip().split("\\s+", -1))
                        .map(Contradictions::letters)
                        .collect(Collectors.joining("\\s+")))
                .collect(Collectors.joining("|"));
    }

    /** Any letters may stand where an asterisk is. */
    private static String letters(String word) {
        return Arrays.stream(word.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining("\\p{L}*"));
    }

    private void add(Stated<String> step, String sentence, String help) {
        findings.add(Finding.refuses(CONTRADICTS, "", step.where(), sentence, help));
    }
}
