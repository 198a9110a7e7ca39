package org.cellfile.render;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Sheet;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.render.calendar.DueCalendar;
import org.cellfile.render.layout.Markup;
import org.cellfile.render.pdf.Embedded;
import org.cellfile.render.pdf.Imprint;
import org.cellfile.render.pdf.MissingGlyphs;
import org.cellfile.render.pdf.Overflow;
import org.cellfile.render.pdf.Typefaces;
import org.cellfile.render.pdf.Typesetting;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.verdict.Printable;

/** Lays out the safety file, the posted sheets, the blank forms and the calendar of what falls due. */
public final class Renderer {

    /** A posted sheet has more text than its page takes. */
    public static final FindingId OVERFLOW = new FindingId("sheet.overflow");
    /** A text holds a character that would leave a gap on the page. */
    public static final FindingId NO_GLYPH = new FindingId("text.no-glyph");

    /** What a sheet that does not fit can be printed on. */
    private static final Map<String, String> LARGER = Map.of("A4", "A3", "Letter", "Tabloid");

    /**
     * Lays every page out in memory; nothing is written.
     *
     * @param attachments embedded in the safety file
     */
    public Rendering render(Printable printable, List<Attachment> attachments) {
        return render(printable, attachments, Typefaces.none());
    }

    /**
     * The same where the plant has typefaces of its own.
     *
     * @param own for sheets and forms in their languages
     */
    public Rendering render(Printable printable, List<Attachment> attachments, Typefaces own) {
        Dossier dossier = printable.dossier();
        List<Finding> findings = missingGlyphs(printable, own);
        if (!findings.isEmpty()) {
            return new Rendering.Unprintable(findings);
        }
        Markup markup = new Markup(printable);
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (Sheet sheet : dossier.sheets()) {
            try (Typesetting page =
                    new Typesetting(markup.sheet(sheet, own.families(sheet.languages())), own.of(sheet.languages()))) {
                Optional<Overflow> overflow = page.overflow();
                if (overflow.isPresent()) {
                    findings.add(overflow(sheet, overflow.get(), dossier.label()));
                } else {
                    files.put(
                            "sheets/" + sheet.file() + ".pdf",
                            page.pdf(
                                    imprint(
                                            markup.sheetTitle(sheet),
                                            dossier.label(),
                                            sheet.languages().get(0)),
                                    List.of()));
                }
            }
        }
        if (!findings.isEmpty()) {
            return new Rendering.Unprintable(findings);
        }
        for (Form form : dossier.forms()) {
            String language = Markup.language(form);
            try (Typesetting pages =
                    new Typesetting(markup.form(form, own.families(List.of(language))), own.of(List.of(language)))) {
                files.put(
                        "forms/" + form.id() + ".pdf",
                        pages.pdf(imprint(markup.formTitle(form), dossier.label(), language), List.of()));
            }
        }
        markup.plans().forEach((id, svg) -> files.put("plans/" + id + ".svg", svg.getBytes(StandardCharsets.UTF_8)));
        try (Typesetting file = new Typesetting(markup.safetyFile())) {
            files.put(
                    dossier.label().cellId() + "-safety-file.pdf",
                    file.pdf(
                            imprint(markup.safetyFileTitle(), dossier.label(), Markup.LANGUAGE),
                            embedded(attachments)));
        }
        if (!dossier.due().isEmpty()) {
            files.put(dossier.label().cellId() + "-due-dates.ics", DueCalendar.bytes(printable));
        }
        return new Rendering.Pages(files);
    }

    /**
     * A note that is no part of the set of pages.
     *
     * @param day which its file bears
     * @param mostPages it may have
     * @return empty when it has more
     */
    public Optional<byte[]> note(Form note, Label label, LocalDate day, int mostPages) {
        String markup = Markup.note(note, label);
        // What no typeface has would refuse the pages of the cell; here it is only told of.
        for (int codePoint : MissingGlyphs.in(List.of(note, label)).keySet()) {
            markup = markup.replace(Character.toString(codePoint), "\u00b7");
        }
        String title = note.title() + ", " + label.cellName();
        try (Typesetting pages = new Typesetting(markup)) {
            return pages.pages() > mostPages
                    ? Optional.empty()
                    : Optional.of(pages.pdf(
                            new Imprint(title, label.integrator(), day, Markup.metadata(title, label)), List.of()));
        }
    }

    private static Imprint imprint(String title, Label label, String language) {
        return new Imprint(
                title, label.integrator(), LocalDate.parse(label.asOf()), Markup.metadata(title, label, language));
    }

    private static List<Embedded> embedded(List<Attachment> attachments) {
        return attachments.stream()
                .map(file -> new Embedded(
                        file.name(),
                        file.mediaType(),
                        file.content(),
                        file.description(),
                        file.relationship().word()))
                .toList();
    }

    private static Finding overflow(Sheet sheet, Overflow overflow, Label label) {
        String parts = overflow.parts().entrySet().stream()
                .map(part -> "`" + part.getKey() + "` " + lines(part.getValue()))
                .collect(Collectors.joining(", "));
        return Finding.refuses(
                        OVERFLOW,
                        sheet.file(),
                        whole(label),
                        "the sheet `" + sheet.file() + "` has " + lines(overflow.lines())
                                + " more than fit on its one page (" + sheet.paper() + ")",
                        (sheet.panels().stream()
                                                .anyMatch(panel ->
                                                        !panel.drawings().isEmpty())
                                        ? "take `place` out of its entry under `posted`, so that no plan is drawn on it, or "
                                        : "")
                                + "shorten or drop lines of these parts or of what stands above them"
                                + (sheet.languages().size() > 1 ? ", print each language on a page of its own" : "")
                                + (LARGER.containsKey(sheet.paper())
                                        ? ", or print it on " + LARGER.get(sheet.paper())
                                        : "")
                                + "; the type is not set smaller, because the sheet has to be read from a metre away")
                .because(List.of(
                        "what no longer fits: " + parts,
                        "the first text that no longer fits: " + excerpt(overflow.first(), 0)));
    }

    private static String lines(int count) {
        return count == 1 ? "1 line" : count + " lines";
    }

    private static List<Finding> missingGlyphs(Printable printable, Typefaces own) {
        Dossier dossier = printable.dossier();
        Label label = dossier.label();
        List<Finding> findings = new ArrayList<>();
        report("the cover", label, label, findings);
        report("the cover", List.of(dossier.releasedBy()), label, findings);
        for (Finding missing : printable.missing()) {
            report("the cover", List.of(missing.sentence(), missing.help()), label, findings);
        }
        for (Chapter chapter : dossier.chapters()) {
            report("the chapter `" + chapter.title() + "`", chapter, label, findings);
        }
        for (Sheet sheet : dossier.sheets()) {
            report("the sheet `" + sheet.file() + "`", sheet, label, own.of(sheet.languages()), findings);
        }
        for (Form form : dossier.forms()) {
            report("the form `" + form.id() + "`", form, label, own.of(List.of(Markup.language(form))), findings);
        }
        return findings;
    }

    private static void report(String place, Object texts, Label label, List<Finding> findings) {
        report(place, texts, label, Typefaces.none(), findings);
    }

    private static void report(String place, Object texts, Label label, Typefaces own, List<Finding> findings) {
        MissingGlyphs.in(texts, own)
                .forEach((codePoint, text) -> findings.add(Finding.refuses(
                                NO_GLYPH,
                                "",
                                whole(label),
                                place + " holds the character " + MissingGlyphs.name(codePoint)
                                        + ", which cannot be printed",
                                "write it with other characters, or in words")
                        .because(List.of(
                                "no typeface of the pages has it, or it is not printed from left to right",
                                "it stands in: " + excerpt(text, text.indexOf(codePoint))))));
    }

    /** About forty characters of the text from a little before the place. */
    private static String excerpt(String text, int place) {
        int from = Math.max(0, place - 20);
        int to = Math.min(text.length(), place + 40);
        String cut = text.substring(from, to).replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}]", "\u00b7");
        return (from > 0 ? "… " : "") + cut + (to < text.length() ? " …" : "");
    }

    private static Span whole(Label label) {
        return SourceFile.unread(label.cellId()).whole();
    }
}
