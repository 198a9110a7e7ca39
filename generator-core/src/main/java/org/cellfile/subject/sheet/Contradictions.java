package org.cellfile.subject.sheet;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.sheet.Part.Line;

/**
 * What in a step of the plant's own goes against a derived one, as far as words tell it: each language says by which words it is
 * known. A sentence that forbids, denies or reports goes against nothing. The rules are common practice.
 */
final class Contradictions {

    static final FindingId CONTRADICTS = new FindingId("sheet.step-contradicts");

    /** Steps that look whether anybody is inside and whether the doors are closed: the cell is not set going before them. */
    private static final Set<String> LOOKING = Set.of("nobody", "out", "closed", "all-closed");

    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?;:])\\s+");

    private static final Pattern SPEED =
            Pattern.compile("(\\d(?:[\\d.,'\u2019\u00a0\u202f]*\\d)?)[ \u00a0\u202f]?(mm/s|m/s|in/s)(?![\\p{L}\\d])");

    private final SheetSort sort;
    private final PostedCell cell;
    private final Findings findings;

    Contradictions(SheetSort sort, PostedCell cell, Findings findings) {
        this.sort = sort;
        this.cell = cell;
        this.findings = findings;
    }

    /**
     * Holds a step against the mode the cell is in while the sheet is followed, and against the derived steps behind it.
     *
     * @param step as it stands in the language of the wording
     * @param part it belongs to
     * @param behind derived steps before which it stands
     */
    void hold(Stated<String> step, Part part, List<Line> behind, Wording wording) {
        Optional<Mode> mode = cell.mode(sort.mode());
        mode.ifPresent(one -> speeds(step, one, wording));
        for (String sentence : SENTENCE.split(step.characters(), -1)) {
            if (word(sentence, "unless", "(?!\\p{L})", wording).isPresent()) {
                continue;
            }
            word(sentence, "defeating", "", wording)
                    .ifPresent(word -> add(
                            step,
                            "`" + word + "` in this step puts a safeguard out of action, which every sheet forbids",
                            "take the step off the sheet; what has to be bypassed for a time is written into the bypass"
                                    + " register, with what takes its place"));
            if (mode.filter(one -> one.inside() == 0).isPresent()) {
                word(sentence, "entering", "", wording)
                        .ifPresent(word -> add(
                                step,
                                "`" + word + "` in this step brings somebody inside, and in the mode `"
                                        + mode.get().tag().characters() + "` nobody is",
                                "write it on the sheet of a mode in which somebody may be inside, or say in the same sentence"
                                        + " that it is forbidden"));
            }
            Optional<String> looking =
                    behind.stream().map(Line::id).filter(LOOKING::contains).findFirst();
            looking.ifPresent(look -> word(sentence, "starting", "", wording)
                    .ifPresent(word -> add(
                            step,
                            "`" + word + "` in this step sets the cell going before the step `" + look
                                    + "`, by which one looks first",
                            "leave out `before`, so that it stands behind the derived steps")));
        }
        if (part.sign().kind() == Kind.EMERGENCY && !behind.isEmpty()) {
            add(
                    step,
                    "in an emergency nothing is done before the step `"
                            + behind.get(0).id() + "`",
                    "leave out `before`, so that it stands behind the derived steps");
        }
    }

    private void speeds(Stated<String> step, Mode mode, Wording wording) {
        Optional<Quantity> limit = mode.speedLimit().value();
        Matcher matcher = SPEED.matcher(step.characters());
        while (limit.isPresent() && matcher.find()) {
            Optional<Quantity> speed = speed(matcher, wording);
            if (speed.filter(one -> one.compareTo(limit.get()) > 0).isPresent()) {
                add(
                        step,
                        "this step speaks of " + matcher.group() + ", and the mode `"
                                + mode.tag().characters() + "` allows "
                                + mode.speedLimit().characters() + " at most ("
                                + mode.speedLimit().where().position() + ")",
                        "leave the speed out; the sheet tells the limit of its mode where it counts");
            }
        }
    }

    /** A number as the language writes it. */
    private static Optional<Quantity> speed(Matcher matcher, Wording wording) {
        DecimalFormatSymbols symbols =
                DecimalFormatSymbols.getInstance(wording.language().locale());
        String mark = Pattern.quote(String.valueOf(symbols.getDecimalSeparator()));
        String[] parts = matcher.group(1).split(mark, 2);
        String whole = parts[0].replaceAll("\\D", "");
        String number = parts.length == 1 ? whole : whole + "." + parts[1].replaceAll("\\D", "");
        return Unit.of(matcher.group(2)).map(unit -> new Quantity(new BigDecimal(number), unit));
    }

    /** The word of the sentence that begins with one of those the language lists under the key. */
    private static Optional<String> word(String sentence, String key, String end, Wording wording) {
        return Arrays.stream(wording.shared("own-steps." + key).split(",", -1))
                .map(String::strip)
                .filter(beginning -> !beginning.isEmpty())
                .map(beginning -> Pattern.compile(
                        "(?iu)(?<!\\p{L})" + Pattern.quote(beginning) + (end.isEmpty() ? "\\p{L}*" : end)))
                .map(pattern -> pattern.matcher(sentence))
                .filter(Matcher::find)
                .map(Matcher::group)
                .findFirst();
    }

    private void add(Stated<String> step, String sentence, String help) {
        findings.add(Finding.refuses(CONTRADICTS, "", step.where(), sentence, help));
    }
}
