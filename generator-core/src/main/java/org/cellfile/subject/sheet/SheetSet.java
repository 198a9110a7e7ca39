package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.Sheets.PostedCopy;
import org.cellfile.subject.sheet.Sheets.Printing;

/**
 * Every posted sheet of a cell in every language in which it is printed, and what keeps one from being posted.
 *
 * @param sheets those whose languages are known
 */
public record SheetSet(List<Sheet> sheets, List<Finding> findings) {

    /** A language in which a sheet is to be printed is not known. */
    public static final FindingId UNKNOWN_LANGUAGE = new FindingId("language.unknown");

    private static final String FRAME = "frame.";

    public static SheetSet of(PostedCell cell) {
        Findings findings = new Findings();
        List<Sheet> sheets = new ArrayList<>();
        Translations translations = cell.sheets().translations(findings);
        for (Printing printing : printings(cell)) {
            List<Language> languages = languages(printing, cell, findings);
            if (languages.size() == printing.languages().size()) {
                for (SheetSort sort : SheetSorts.of(cell)) {
                    List<Wording> wordings = languages.stream()
                            .map(language -> new Wording(sort.id(), language, translations))
                            .toList();
                    sheets.add(sheet(sort, cell, wordings, printing, findings));
                }
            }
        }
        Untold.report(cell, findings);
        return new SheetSet(List.copyOf(sheets), findings.sorted());
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

    private static List<Language> languages(Printing printing, PostedCell cell, Findings findings) {
        List<Language> languages = new ArrayList<>();
        for (Stated<String> tag : printing.languages()) {
            Optional<Language> language =
                    Language.of(tag.characters(), cell.sheets().files());
            language.ifPresentOrElse(
                    languages::add,
                    () -> findings.add(Finding.refuses(
                            UNKNOWN_LANGUAGE,
                            "",
                            tag.where(),
                            "`" + tag.characters() + "` is not a language in which sheets can be printed",
                            "write the tag of a language that is there, as in en, or put its wording into `"
                                    + Language.FOLDER + tag.characters() + ".properties` beside the description")));
        }
        return languages;
    }

    private static Sheet sheet(
            SheetSort sort, PostedCell cell, List<Wording> wordings, Printing printing, Findings findings) {
        List<List<Part>> told = wordings.stream()
                .map(wording -> OwnSteps.in(sort, cell, wording, findings))
                .toList();
        List<String> tags =
                wordings.stream().map(wording -> wording.language().tag()).toList();
        return new Sheet(
                sort.id(),
                tags,
                printing.paper()
                        .value()
                        .orElseGet(() -> cell.identity().facts().page().value().orElse("A4")),
                wordings.stream().map(wording -> wording.say("title")).toList(),
                copies(sort, tags, cell)
                        .map(copy -> wordings.stream()
                                .map(wording -> wording.text(copy.at()))
                                .toList())
                        .toList(),
                List.of(),
                IntStream.range(0, told.get(0).size())
                        .mapToObj(part -> panel(
                                told.stream().map(parts -> parts.get(part)).toList()))
                        .toList(),
                Foot.of(cell, wordings),
                frame(wordings));
    }

    /** What stands around the text, each in every language. */
    private static Map<String, String> frame(List<Wording> wordings) {
        Map<String, String> frame = new TreeMap<>();
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
                first.kind(),
                told.stream().map(Part::title).toList(),
                first.numbered(),
                IntStream.range(0, first.lines().size())
                        .mapToObj(line -> told.stream()
                                .map(part -> part.lines().get(line).text())
                                .toList())
                        .toList());
    }

    /** The copies of a sheet in these languages. */
    private static Stream<PostedCopy> copies(SheetSort sort, List<String> tags, PostedCell cell) {
        List<String> first = printings(cell).get(0).languages().stream()
                .map(Stated::characters)
                .toList();
        return cell.sheets().copies().stream()
                .filter(copy -> copy.sheet().characters().equals(sort.id()))
                .filter(copy -> (copy.languages().isEmpty()
                                ? first
                                : copy.languages().stream()
                                        .map(Stated::characters)
                                        .toList())
                        .equals(tags));
    }
}
