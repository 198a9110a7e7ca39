package org.cellfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.render.Renderer;
import org.cellfile.render.pdf.MissingGlyphs;
import org.cellfile.render.pdf.Typeface;
import org.cellfile.render.pdf.Typefaces;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.InLanguages;
import org.cellfile.subject.sheet.Language;
import org.cellfile.subject.sheet.PostedText;
import org.cellfile.subject.sheet.SheetSet;
import org.cellfile.subject.sheet.Sheets;

/**
 * The plant's typefaces, and whether every posted text can be printed with them and those of the pages.
 *
 * @param usable those pages can carry
 * @param unusable why the others cannot be used
 */
record PostedTypefaces(Typefaces usable, List<Finding> unusable) {

    /** A file with a typeface cannot be used. */
    static final FindingId UNUSABLE = new FindingId("typeface.unusable");

    static PostedTypefaces of(Sheets sheets) {
        Typefaces usable = Typefaces.none();
        List<Finding> findings = new ArrayList<>();
        for (InLanguages.Typeface stated : sheets.inLanguages().typefaces()) {
            Optional<byte[]> bytes = stated.file().bytes();
            if (bytes.isPresent() && stated.language().value().isPresent()) {
                try {
                    usable.byLanguage().putIfAbsent(stated.language().characters(), Typeface.of(bytes.get()));
                } catch (Typeface.Unusable because) {
                    findings.add(Finding.refuses(
                            UNUSABLE,
                            "",
                            stated.file().path().where(),
                            "`" + stated.file().path().characters() + "` " + because.getMessage(),
                            "name a file with TrueType outlines, of one typeface, whose licence lets it be embedded"));
                }
            }
        }
        return new PostedTypefaces(usable, findings);
    }

    /** What cannot be printed, each text once at its first character that cannot. */
    List<Finding> findings(SheetSet posted) {
        List<Finding> findings = new ArrayList<>(unusable);
        for (PostedText text : posted.texts()) {
            Map<Integer, String> faults = faults(text.words(), text.language());
            faults.keySet().stream()
                    .findFirst()
                    .ifPresent(first -> findings.add(refused(
                            text.place(Pattern.compile(Pattern.quote(Character.toString(first)))),
                            "this text is posted in `" + text.language() + "`",
                            text.language(),
                            faults)));
        }
        for (Language language : posted.languages()) {
            Map<Integer, String> faults = new TreeMap<>();
            Optional<Span> where = Optional.empty();
            for (Stated<String> said : language.said()) {
                Map<Integer, String> here = faults(said, language.tag());
                where = where.or(() -> here.isEmpty() ? Optional.empty() : Optional.of(said.where()));
                faults.putAll(here);
            }
            where.ifPresent(first -> findings.add(
                    refused(first, "this is fixed wording in `" + language.tag() + "`", language.tag(), faults)));
        }
        return findings;
    }

    private Map<Integer, String> faults(Stated<String> text, String language) {
        Map<Integer, String> faults = new LinkedHashMap<>();
        text.characters()
                .codePoints()
                .forEach(codePoint -> usable.fault(codePoint, List.of(language))
                        .ifPresent(because -> faults.putIfAbsent(codePoint, because)));
        return faults;
    }

    private static Finding refused(Span where, String what, String language, Map<Integer, String> faults) {
        Map.Entry<Integer, String> first = faults.entrySet().iterator().next();
        List<String> because = new ArrayList<>();
        because.add(first.getValue());
        if (faults.size() > 1) {
            because.add("characters in it that cannot be printed: " + faults.size());
        }
        boolean typeface = first.getValue().equals(MissingGlyphs.NO_TYPEFACE);
        return Finding.refuses(
                        Renderer.NO_GLYPH,
                        "",
                        where,
                        what + " and holds the character " + MissingGlyphs.name(first.getKey())
                                + ", which cannot be printed",
                        typeface
                                ? "name under `sheets`, `typefaces` a file with a typeface for `" + language
                                        + "` that has it, or write it with other characters"
                                : "this program cannot print it with any typeface: write it with other characters, or have the"
                                        + " sheets in `" + language + "` set by other means")
                .because(because);
    }
}
