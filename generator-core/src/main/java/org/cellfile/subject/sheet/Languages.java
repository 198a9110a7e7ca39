package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.read.WordsFile;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.Sheets.Printing;

/** The languages in which the sheets of a cell are printed, each read once, and whatever keeps one from being posted. */
final class Languages {

    /** A language in which something is to be printed is not known. */
    static final FindingId UNKNOWN = new FindingId("language.unknown");

    /** Something is stated for a language in which nothing is printed. */
    static final FindingId NOT_PRINTED = new FindingId("language.not-printed");

    private final Sheets sheets;
    private final Findings findings;
    private final Set<String> printed = new TreeSet<>();
    private final Set<String> reported = new TreeSet<>();
    private final Map<String, Language> usable = new LinkedHashMap<>();
    private final Map<String, WordingReview> reviews = new LinkedHashMap<>();

    Languages(Sheets sheets, List<Printing> printings, Findings findings) {
        this.sheets = sheets;
        this.findings = findings;
        known(sheets.language());
        for (Printing printing : printings) {
            for (Stated<String> tag : printing.languages()) {
                if (printed.add(tag.characters()) && known(tag)) {
                    read(tag);
                }
            }
        }
    }

    private void read(Stated<String> stated) {
        String tag = stated.characters();
        Findings faults = new Findings();
        Optional<Language> language = Language.of(tag, sheets.files(), faults);
        findings.addAll(faults.sorted());
        if (language.isEmpty()) {
            unknown(stated, List.of());
        } else if (faults.sorted().isEmpty()) {
            usable.put(tag, language.get());
            WordingReview review = WordingReview.of(language.get(), sheets);
            reviews.put(tag, review);
            // Where the section itself is missing, that is reported, and nothing more need be said of it.
            if (sheets.responsible().value().isPresent()) {
                review.report(stated, findings);
            }
        }
    }

    /** Reports what is the tag of no language, each once. */
    private boolean known(Stated<String> tag) {
        Optional<String> fault = tag.value().flatMap(LanguageTag::fault);
        fault.filter(because -> reported.add(tag.characters())).ifPresent(because -> unknown(tag, List.of(because)));
        return fault.isEmpty();
    }

    private void unknown(Stated<String> tag, List<String> because) {
        findings.add(Finding.refuses(
                        UNKNOWN,
                        "",
                        tag.where(),
                        "`" + tag.characters() + "` is not a language in which sheets can be printed",
                        because.isEmpty()
                                ? "put its wording into `" + WordsFile.path(tag.characters())
                                        + "` beside the description; languages that are there: `"
                                        + String.join("`, `", Language.KNOWN) + "`"
                                : "write the tag of a language, as in `" + String.join("`, `", Language.KNOWN) + "`")
                .because(because));
    }

    /** Warns of what is stated for languages nobody prints, and refuses it for what is no language; each language once. */
    void reportNotPrinted(List<Stated<String>> translations) {
        Map<String, Finding> found = new LinkedHashMap<>();
        List<Stated<String>> reviews = new ArrayList<>();
        sheets.inLanguages().reviews().forEach(review -> reviews.add(review.language()));
        List<Stated<String>> typefaces = new ArrayList<>();
        sheets.inLanguages().typefaces().forEach(face -> typefaces.add(face.language()));
        Stream<Stated<String>> files = sheets.files().stream()
                .flatMap(file ->
                        WordsFile.tag(file.path()).stream().map(tag -> new Stated.Written<>(tag, file.whole(), tag)));
        notPrinted("a review", reviews.stream(), found);
        notPrinted("a typeface", typefaces.stream(), found);
        notPrinted("wording", files, found);
        notPrinted("a translation", translations.stream(), found);
        found.values().forEach(findings::add);
    }

    private void notPrinted(String what, Stream<? extends Stated<String>> tags, Map<String, Finding> found) {
        tags.filter(tag -> tag.value().isPresent())
                .filter(tag -> known(tag)
                        && !printed.contains(tag.characters())
                        && !tag.characters().equals(sheets.ownLanguage()))
                .forEach(tag -> found.putIfAbsent(
                        tag.characters(),
                        Finding.warns(
                                NOT_PRINTED,
                                "",
                                tag.where(),
                                what + " is stated for `" + tag.characters() + "`, in which nothing is printed",
                                "name the language under `sheets`, `printed`, or delete what is stated for it")));
    }

    /** Those of a printing that can be used. */
    List<Language> of(Printing printing) {
        return printing.languages().stream()
                .flatMap(tag -> of(tag.characters()).stream())
                .toList();
    }

    Optional<Language> of(String tag) {
        return Optional.ofNullable(usable.get(tag));
    }

    /** Those that can be used, each with what its review is worth. */
    List<WordingReview> reviews() {
        return List.copyOf(reviews.values());
    }

    /** True when somebody reviewed the wording of one that can be used, as it is now. */
    boolean reviewed(Language language) {
        return Optional.ofNullable(reviews.get(language.tag()))
                .filter(WordingReview::counts)
                .isPresent();
    }

    /** The tags of all that are to be printed. */
    Set<String> printed() {
        return printed;
    }

    /** True when all of them can be. */
    boolean complete() {
        return usable.keySet().equals(printed);
    }
}
