package org.cellfile.subject.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.dossier.Sign;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.plan.SheetPlan;
import org.cellfile.subject.sheet.Sheets.PostedCopy;
import org.cellfile.subject.sheet.Sheets.Printing;

/**
 * Every posted sheet of a cell in every language in which it is printed, and what keeps one from being posted.
 *
 * @param sheets those whose languages are known
 * @param texts of the cell that stand on them
 * @param records the blank record of a briefing in each language
 * @param reviews of the languages in which they are
 */
public record SheetSet(
        List<Sheet> sheets,
        List<PostedText> texts,
        List<Form> records,
        List<WordingReview> reviews,
        List<Finding> findings) {

    private static final String OUT_OF_DATE = "every-sheet.out-of-date";

    private static final String NOT_REVIEWED = "every-sheet.not-reviewed";

    private static final String FRAME = "frame.";

    private static final String PLAN = "every-sheet.plan";

    public static SheetSet of(PostedCell cell) {
        Findings findings = new Findings();
        List<Sheet> sheets = new ArrayList<>();
        Translations translations = cell.sheets().translations(findings);
        List<Printing> printable = Posting.printable(printings(cell), findings);
        // Of languages that stand only in a printing that cannot be laid out nothing is said.
        boolean all = printable.size() == printings(cell).size();
        Languages known = new Languages(cell.sheets(), printable, findings);
        for (Printing printing : printable) {
            List<Language> languages = known.of(printing);
            // What names no language is told where it was read.
            if (!languages.isEmpty() && languages.size() == printing.languages().size()) {
                for (SheetSort sort : SheetSorts.telling(cell)) {
                    List<Wording> wordings = languages.stream()
                            .map(language -> new Wording(sort.id(), language, translations))
                            .toList();
                    List<List<Part>> told = wordings.stream()
                            .map(wording -> OwnSteps.in(sort, cell, wording, findings))
                            .toList();
                    Map<String, List<PostedCopy>> prints = Posting.prints(
                            sort.id(), languages.stream().map(Language::tag).toList(), cell);
                    prints.forEach((place, copies) -> sheets.add(sheet(
                            sort, cell, wordings, printing, known, told, prints.size() == 1 ? "" : place, copies)));
                }
            }
        }
        if (all) {
            Posting.look(cell, sheets, findings);
            known.reportNotPrinted(translations.languages());
        }
        Untold.report(cell, findings);
        Found.reportTwice(cell.sheets().found(), findings);
        IsolationOrder.report(cell, findings);
        translations.reportContradicted();
        if (all && known.complete()) {
            translations.reportUnused(known.printed());
        }
        for (PostedText text : translations.posted()) {
            PlainWords.check(
                    text,
                    known.of(text.language()).map(Language::vague).orElseGet(List::of),
                    cell.sheets().inLanguages().longestSentence().value(),
                    findings);
        }
        return new SheetSet(
                List.copyOf(sheets),
                translations.posted(),
                known.reviews().stream()
                        .map(review -> record(review.language(), cell, translations))
                        .toList(),
                known.reviews(),
                findings.sorted());
    }

    private static Form record(Language language, PostedCell cell, Translations translations) {
        Wording wording = new Wording(BriefingRecord.ID, language, translations);
        return BriefingRecord.form(
                wording,
                SheetSorts.telling(cell).stream()
                        .map(sort -> new Wording(sort.id(), language, translations).say("title"))
                        .toList(),
                cell.responsible(),
                frame(cell, List.of(wording)));
    }

    /** The languages in which they are. */
    public List<Language> languages() {
        return reviews.stream().map(WordingReview::language).toList();
    }

    /** Where nothing is said, the sheets are printed once, in the language of the description. */
    static List<Printing> printings(PostedCell cell) {
        Sheets sheets = cell.sheets();
        return sheets.printings().isEmpty()
                ? List.of(new Printing(
                        List.of(new Stated.Written<>(sheets.ownLanguage(), sheets.where(), sheets.ownLanguage())),
                        new Stated.Missing<>(sheets.where(), "paper")))
                : sheets.printings();
    }

    private static Sheet sheet(
            SheetSort sort,
            PostedCell cell,
            List<Wording> wordings,
            Printing printing,
            Languages known,
            List<List<Part>> told,
            String place,
            List<PostedCopy> copies) {
        Optional<LocalDate> validUntil = validUntil(sort, cell);
        return new Sheet(
                sort.id(),
                wordings.stream().map(wording -> wording.language().tag()).toList(),
                place,
                printing.paper()
                        .value()
                        .orElseGet(() -> cell.identity().facts().page().value().orElse("A4")),
                wordings.stream().map(wording -> wording.say("title")).toList(),
                copies.stream()
                        .map(copy -> wordings.stream()
                                .map(wording -> wording.text(copy.at()))
                                .toList())
                        .toList(),
                marks(wordings, known, validUntil.filter(day -> ranOut(day, cell))),
                Stream.concat(
                                IntStream.range(0, told.get(0).size())
                                        .mapToObj(part -> panel(told.stream()
                                                .map(parts -> parts.get(part))
                                                .toList())),
                                plan(copies, cell, wordings).stream())
                        .toList(),
                Foot.of(Sheet.name(sort.id(), place), cell, wordings),
                Foot.displays(cell, wordings),
                Foot.dates(validUntil, cell, wordings),
                validUntil.map(LocalDate::toString).orElse(""),
                frame(cell, wordings));
    }

    /** The plan of the cell, on a sheet whose place on it is stated. */
    private static Optional<Panel> plan(List<PostedCopy> copies, PostedCell cell, List<Wording> wordings) {
        List<String> places =
                copies.stream().flatMap(copy -> copy.place().value().stream()).toList();
        return cell.layout()
                .flatMap(layout -> SheetPlan.of(
                        layout,
                        places,
                        key -> each(wordings, wording -> wording.shared(PLAN + "." + key)),
                        text -> each(wordings, wording -> wording.text(text))))
                .map(drawing -> new Panel(
                        "plan",
                        Kind.INFORMATION,
                        Sign.of(Kind.INFORMATION),
                        each(wordings, wording -> wording.shared(PLAN)),
                        false,
                        List.of(),
                        List.of(drawing)));
    }

    private static List<String> each(List<Wording> wordings, Function<Wording, String> words) {
        return wordings.stream().map(words).toList();
    }

    /** The earliest day on which something it rests on falls due. */
    private static Optional<LocalDate> validUntil(SheetSort sort, PostedCell cell) {
        return cell.dues().stream()
                .filter(due -> sort.restsOn(due, cell))
                .map(Due::on)
                .min(Comparator.naturalOrder());
    }

    /** A reader is told whose language nobody of it has looked at. */
    /** True when the sheet was valid for the last time before the day that the cell speaks of. */
    private static boolean ranOut(LocalDate validUntil, PostedCell cell) {
        return cell.identity()
                .facts()
                .asOf()
                .value()
                .filter(validUntil::isBefore)
                .isPresent();
    }

    private static List<List<String>> marks(List<Wording> wordings, Languages known, Optional<LocalDate> ranOut) {
        List<List<String>> marks = new ArrayList<>();
        ranOut.ifPresent(day -> marks.add(each(wordings, wording -> wording.shared(OUT_OF_DATE, wording.date(day)))));
        String names = wordings.stream()
                .map(Wording::language)
                .filter(language -> !known.reviewed(language))
                .map(Language::name)
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            marks.add(each(wordings, wording -> wording.shared(NOT_REVIEWED, names)));
        }
        return List.copyOf(marks);
    }

    /** What stands around the text, each in every language. */
    private static Map<String, String> frame(PostedCell cell, List<Wording> wordings) {
        Map<String, String> frame = new TreeMap<>();
        frame.put(
                "cell-name",
                Wording.inEach(
                        wordings,
                        wording -> wording.text(cell.identity().facts().name())));
        for (String key : wordings.get(0).language().keys()) {
            if (key.startsWith(FRAME)) {
                frame.put(key.substring(FRAME.length()), Wording.inEach(wordings, wording -> wording.shared(key)));
            }
        }
        return frame;
    }

    private static Panel panel(List<Part> told) {
        Part first = told.get(0);
        return new Panel(
                first.id(),
                first.sign().kind(),
                first.sign(),
                told.stream().map(Part::title).toList(),
                first.numbered(),
                IntStream.range(0, first.lines().size())
                        .mapToObj(line -> told.stream()
                                .map(part -> part.lines().get(line).text())
                                .toList())
                        .toList());
    }
}
