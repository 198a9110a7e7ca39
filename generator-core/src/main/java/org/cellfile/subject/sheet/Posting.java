package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.Sheets.PostedCopy;
import org.cellfile.subject.sheet.Sheets.Printing;

/** Where copies of the printed sheets hang. A sheet that hangs nowhere tells nobody anything. */
final class Posting {

    /** A copy hangs in languages in which its sheet is not printed. */
    static final FindingId NOT_PRINTED = new FindingId("sheet.copy-not-printed");

    /** A copy names no place on the plan, and another copy of the same sheet does. */
    static final FindingId ANOTHER_PLACE = new FindingId("sheet.another-place");

    /** A printed sheet hangs nowhere. */
    static final FindingId NOWHERE = new FindingId("sheet.posted-nowhere");

    /** Two printings are named alike, or one language stands twice in a printing. */
    static final FindingId TWICE = new FindingId("sheet.printed-twice");

    /** More languages stand on one page than somebody reads past. */
    static final FindingId TOO_MANY = new FindingId("sheet.too-many-languages");

    /** Common practice: with two, each stands in a manner of its own; a third cannot be told from them at a glance. */
    private static final int MOST_LANGUAGES = 2;

    private Posting() {}

    /**
     * The prints of a sheet in these languages, by the place on the plan at which each hangs: its reader sees himself there. All copies
     * that name none are one print, and so are those of a sheet that hangs nowhere.
     */
    static Map<String, List<PostedCopy>> prints(String sheet, List<String> tags, PostedCell cell) {
        Map<String, List<PostedCopy>> prints = new LinkedHashMap<>();
        copies(sheet, tags, cell)
                .forEach(copy -> prints.computeIfAbsent(copy.place().value().orElse(""), any -> new ArrayList<>())
                        .add(copy));
        return prints.isEmpty() ? Map.of("", List.of()) : prints;
    }

    /** The copies of a sheet in these languages. */
    private static Stream<PostedCopy> copies(String sheet, List<String> tags, PostedCell cell) {
        return cell.sheets().copies().stream()
                .filter(copy -> copy.sheet().characters().equals(sheet))
                .filter(copy -> languages(copy, cell).equals(tags));
    }

    /** Those it is printed in, by their tags. */
    private static List<String> languages(PostedCopy copy, PostedCell cell) {
        return tags(copy.languages().isEmpty() ? SheetSet.printings(cell).get(0).languages() : copy.languages());
    }

    private static List<String> tags(List<Stated<String>> languages) {
        return languages.stream().map(Stated::characters).toList();
    }

    /**
     * Copies of what is not printed refuse the description; sheets without a copy bar its release. Nothing is said of copies where a
     * printing cannot be laid out.
     */
    static void look(PostedCell cell, List<Sheet> sheets, Findings findings) {
        List<List<String>> printed = SheetSet.printings(cell).stream()
                .map(printing -> tags(printing.languages()))
                .toList();
        List<PostedCopy> strays = cell.sheets().copies().stream()
                .filter(copy -> copy.sheet().value().isPresent())
                .filter(copy -> !printed.contains(languages(copy, cell)))
                .toList();
        strays.forEach(copy -> findings.add(notPrinted(copy, languages(copy, cell), printed)));
        cell.sheets().copies().stream()
                .filter(copy ->
                        copy.sheet().value().isPresent() && copy.place().value().isEmpty())
                .forEach(copy -> copies(copy.sheet().characters(), languages(copy, cell), cell)
                        .filter(other -> other.place().value().isPresent())
                        .findFirst()
                        .ifPresent(other -> findings.add(anotherPlace(copy, other))));
        List<String> nowhere = sheets.stream()
                .filter(sheet -> sheet.places().isEmpty())
                .filter(sheet -> strays.stream()
                        .noneMatch(copy -> copy.sheet().characters().equals(sheet.id())))
                .map(Sheet::file)
                .toList();
        // What could not be read, a copy or all of `sheets`, may be just what is missed here.
        boolean unread = cell.sheets().responsible().value().isEmpty()
                || cell.sheets().copies().stream()
                        .anyMatch(copy -> copy.sheet().value().isEmpty());
        if (!nowhere.isEmpty() && !unread) {
            findings.add(Finding.barsRelease(
                    NOWHERE,
                    "",
                    cell.sheets().where(),
                    (nowhere.size() == 1 ? "no copy of the sheet `" : "no copy of the sheets `")
                            + String.join("`, `", nowhere) + "` is posted anywhere",
                    "state under `posted` where a copy of each hangs; a language in which nobody at the cell reads is taken out of"
                            + " `printed`"));
        }
    }

    private static Finding anotherPlace(PostedCopy copy, PostedCopy other) {
        return Finding.refuses(
                ANOTHER_PLACE,
                copy.sheet().characters(),
                copy.at().where(),
                "the copy of `" + copy.sheet().characters() + "` at `"
                        + copy.at().characters()
                        + "` names no place on the plan, and the copy at `"
                        + other.at().characters() + "` names `" + other.place().characters()
                        + "`: whoever reads this copy would look for himself on its small plan and not be there",
                "state the `place` of each copy, or of none");
    }

    /**
     * The printings that can be laid out, of those stated; the others are reported. Sheets are named by their languages, so that of
     * two named alike the later would take the place of the earlier.
     */
    static List<Printing> printable(List<Printing> printings, Findings findings) {
        Map<List<String>, Span> before = new HashMap<>();
        List<Printing> printable = new ArrayList<>();
        for (Printing printing : printings) {
            List<String> tags = tags(printing.languages());
            if (tags.isEmpty()) {
                continue;
            }
            Span where = printing.languages().get(0).where();
            Span first = before.putIfAbsent(tags, where);
            if (first != null) {
                findings.add(Finding.refuses(
                        TWICE,
                        "",
                        where,
                        "the sheets are printed in `" + String.join("` and `", tags) + "` at " + first.position()
                                + " already, and these would take their place",
                        "keep one of the two, with the paper on which it is hung up"));
            } else if (Set.copyOf(tags).size() < tags.size()) {
                findings.add(Finding.refuses(
                        TWICE,
                        "",
                        where,
                        "a language stands twice in this printing: `" + String.join("`, `", tags) + "`",
                        "name each language once"));
            } else if (tags.size() > MOST_LANGUAGES) {
                findings.add(Finding.refuses(
                        TOO_MANY,
                        "",
                        printing.languages().get(MOST_LANGUAGES).where(),
                        "a sheet in `" + String.join("`, `", tags)
                                + "` says everything " + tags.size()
                                + " times, and nobody finds the next step on it while standing at a machine",
                        "print two languages on one page at most, and state another printing for the others"));
            } else {
                printable.add(printing);
            }
        }
        return printable;
    }

    private static Finding notPrinted(PostedCopy copy, List<String> tags, List<List<String>> printed) {
        return Finding.refuses(
                NOT_PRINTED,
                "",
                copy.languages().isEmpty()
                        ? copy.sheet().where()
                        : copy.languages().get(0).where(),
                "a copy of `" + copy.sheet().characters() + "` hangs in `" + String.join("` and `", tags)
                        + "`, and no sheet is printed so",
                "what is printed: "
                        + String.join(
                                "; ",
                                printed.stream()
                                        .map(one -> "`" + String.join("` and `", one) + "`")
                                        .toList())
                        + "; name one of these, in this order, or add what hangs there to `printed`");
    }
}
