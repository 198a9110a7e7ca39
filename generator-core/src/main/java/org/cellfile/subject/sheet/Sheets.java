package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.finding.Findings;
import org.cellfile.read.LogoFile;
import org.cellfile.read.Section;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.plan.OperatorPlace;

/**
 * What is stated about the posted sheets.
 *
 * @param responsible who answers for them in the plant
 * @param language in which the description itself is written
 * @param signalWords whether hazards are headed by a signal word, as is the custom in the United States
 * @param printings in which languages and on which paper they are printed, one after the other
 * @param copies which hangs where
 * @param found where people find devices whose position is told at length
 * @param steps the plant's own
 * @param translations of the cell's texts
 * @param briefings of people on what the sheets ask
 * @param logo of the plant, at the head of each
 * @param inLanguages who reviewed the wording, and what else is stated about languages
 * @param files among which the plant's own languages lie
 */
public record Sheets(
        Stated<String> responsible,
        Stated<String> language,
        Stated<String> signalWords,
        List<Printing> printings,
        List<PostedCopy> copies,
        List<Found> found,
        List<OwnStep> steps,
        List<Translations.Translated> translations,
        List<Briefing> briefings,
        Optional<LogoFile> logo,
        InLanguages inLanguages,
        List<SourceFile> files,
        Span where) {

    static final Set<String> PAPERS = Set.of("A4", "A3", "Letter", "Tabloid");

    /** The sheets printed in the same languages on the same paper: two languages stand on one page, one below the other. */
    public record Printing(List<Stated<String>> languages, Stated<String> paper) {
        static Printing read(Section section) {
            return new Printing(section.texts("languages"), section.wordIfStated("paper", PAPERS));
        }
    }

    /**
     * A copy that hangs at the cell.
     *
     * @param languages those it is printed in; of the first printing where nothing is said
     * @param place where that is on the plan, which is then drawn on the sheet; missing where it needs none
     */
    public record PostedCopy(
            Stated<String> sheet, List<Stated<String>> languages, Stated<String> at, Stated<String> place) {
        static PostedCopy read(Section section) {
            return new PostedCopy(
                    section.word("sheet", SheetSorts.ids()),
                    section.textsIfStated("languages"),
                    section.text("at"),
                    section.referenceIfStated("place", OperatorPlace.SORT));
        }
    }

    /**
     * A step of the plant's own.
     *
     * @param part of the sheet
     * @param before which derived step it stands; behind all of them where nothing is said
     */
    public record OwnStep(Stated<String> sheet, Stated<String> part, Stated<String> before, Stated<String> words) {
        static OwnStep read(Section section) {
            return new OwnStep(
                    section.word("sheet", SheetSorts.ids()),
                    section.text("part"),
                    section.textIfStated("before"),
                    section.text("do"));
        }
    }

    public static Sheets read(Section top, List<SourceFile> files) {
        Section section = top.section("sheets");
        Sheets sheets = new Sheets(
                section.reference("responsible", Person.SORT),
                section.textIfStated("language"),
                section.wordIfStated("signal-words", Set.of("yes", "no")),
                Section.each(section.listIfStated("printed"), Printing::read),
                Section.each(section.listIfStated("posted"), PostedCopy::read),
                Section.each(section.listIfStated("found"), Found::read),
                Section.each(section.listIfStated("own-steps"), OwnStep::read),
                Section.each(top.listIfStated("translations"), Translations.Translated::read),
                Section.each(top.listIfStated("briefings"), Briefing::read),
                section.logoIfStated("logo"),
                InLanguages.read(section),
                files,
                section.where());
        section.close();
        return sheets;
    }

    /** The tag of the language in which the description is written. */
    public String ownLanguage() {
        return language.value().orElse(Language.FIRST);
    }

    /** Its texts in other languages. */
    Translations translations(Findings findings) {
        return new Translations(ownLanguage(), translations, findings);
    }

    /** When people have to be briefed again. */
    public List<Due> dues(Identity identity) {
        return Briefing.dues(briefings, identity);
    }

    /** Every language in which something is posted. */
    public Set<String> languages() {
        Set<String> tags = new TreeSet<>();
        printings.forEach(printing -> printing.languages().forEach(tag -> tags.add(tag.characters())));
        if (printings.isEmpty()) {
            tags.add(ownLanguage());
        }
        return tags;
    }
}
