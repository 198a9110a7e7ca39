package org.cellfile.render.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.finding.Finding;
import org.cellfile.render.code.QrCode;
import org.cellfile.render.template.Templates;
import org.cellfile.verdict.Printable;

/** The page trees of one cell as XHTML. */
public final class Markup {

    /** Of the safety file and of forms that name no other. */
    public static final String LANGUAGE = "en";

    /** Two lines of the margin of a posted sheet hold about 250 characters, of which a hundred say that it is a draft. */
    private static final int ALL_IN_SHORT = 150;

    private static final int LONGEST_IN_SHORT = 75;

    private final Printable printable;
    private final Map<String, String> words = Templates.words(LANGUAGE);

    public Markup(Printable printable) {
        this.printable = printable;
    }

    /** Makes ready what does not depend on the cell, for a run that has to wait for something else meanwhile. */
    public static void prepare() {
        Templates.prepare("file.xhtml.ftl", "blocks/", Block.class);
    }

    /** The safety file: cover, contents, chapters. */
    public String safetyFile() {
        Dossier dossier = printable.dossier();
        Map<String, Object> data = frame();
        data.put("title", safetyFileTitle());
        data.put("chapters", dossier.chapters());
        data.put("workings", workings(dossier.chapters()));
        data.put("releasedBy", dossier.releasedBy());
        return Templates.fill("file.xhtml.ftl", data);
    }

    /**
     * One posted sheet.
     *
     * @param typefaces of the plant's own, by language
     */
    public String sheet(Sheet sheet, Map<String, String> typefaces) {
        Map<String, Object> data = frame();
        data.put("language", sheet.languages().get(0));
        data.put("words", words(sheet.frame()));
        data.put("title", sheetTitle(sheet));
        data.put("logo", printable.dossier().logo());
        data.put("typefaces", typefaces);
        data.put("sheet", sheet);
        SheetCode code = SheetCode.of(sheet, printable.dossier().label(), printable.draft());
        data.put("digest", SheetCode.grouped(code.digest()));
        data.put("codeText", code.text());
        data.put("qr", QrCode.of(code.text()));
        return Templates.fill("sheet.xhtml.ftl", data);
    }

    /**
     * One blank form.
     *
     * @param typefaces of the plant's own, by language
     */
    public String form(Form form, Map<String, String> typefaces) {
        Map<String, Object> data = frame();
        data.put("language", language(form));
        data.put("words", words(form.frame()));
        data.put("typefaces", typefaces);
        data.put("title", formTitle(form));
        data.put("form", form);
        return Templates.fill("form.xhtml.ftl", data);
    }

    /** That of the file, where a form names none. */
    public static String language(Form form) {
        return form.language().isEmpty() ? LANGUAGE : form.language();
    }

    private Map<String, String> words(Map<String, String> others) {
        Map<String, String> all = new HashMap<>(words);
        all.putAll(others);
        return all;
    }

    /** Every plan of the safety file as a file of its own, by its name without an ending. */
    public SortedMap<String, String> plans() {
        SortedMap<String, String> plans = new TreeMap<>();
        printable.dossier().chapters().forEach(chapter -> collectPlans(chapter.blocks(), plans));
        return plans;
    }

    private void collectPlans(List<Block> blocks, Map<String, String> plans) {
        for (Block block : blocks) {
            if (block instanceof Block.Drawing drawing && drawing.data().get("id") instanceof String id) {
                Map<String, Object> data = frame();
                data.put("block", drawing);
                plans.put(id, Templates.fill("plan.svg.ftl", data));
            } else if (block instanceof Block.Section section) {
                collectPlans(section.blocks(), plans);
            }
        }
    }

    /** A note about two states of the cell. */
    public static String note(Form note, Label label) {
        return Templates.fill(
                "note.xhtml.ftl",
                Map.of(
                        "language",
                        LANGUAGE,
                        "words",
                        Templates.words(LANGUAGE),
                        "label",
                        label,
                        "form",
                        note,
                        "draft",
                        false));
    }

    /** The title in the reader program's window and in the metadata of the safety file. */
    public String safetyFileTitle() {
        return titled(words("safety-file"));
    }

    /** The same of a sheet. */
    public String sheetTitle(Sheet sheet) {
        return titled(String.join(" / ", sheet.title()));
    }

    /** The same of a form. */
    public String formTitle(Form form) {
        return titled(form.title());
    }

    /** The metadata packet that PDF/A and PDF/UA ask for, of the safety file. */
    public String metadata(String title) {
        return metadata(title, printable.dossier().label());
    }

    /** The same of a page of that cell. */
    public static String metadata(String title, Label label) {
        return metadata(title, label, LANGUAGE);
    }

    /** The same of a page in another language. */
    public static String metadata(String title, Label label, String language) {
        return Templates.fill("metadata.xmp.ftl", Map.of("title", title, "label", label, "language", language));
    }

    private Map<String, Object> frame() {
        Map<String, Object> data = new HashMap<>();
        data.put("language", LANGUAGE);
        data.put("words", words);
        data.put("label", printable.dossier().label());
        data.put("draft", printable.draft());
        List<Finding> missing = printable.missing();
        List<String> inShort = inShort(missing);
        data.put("missing", missing);
        data.put("inShort", String.join("; ", inShort));
        data.put(
                "inShortAll",
                inShort.equals(missing.stream().map(Finding::sentence).toList()));
        return data;
    }

    /** The first things that bar release, each in as few words as a line in the margin has room for. */
    private static List<String> inShort(List<Finding> missing) {
        List<String> inShort = new ArrayList<>();
        int length = 0;
        for (Finding finding : missing) {
            String sentence = finding.sentence();
            String one = sentence;
            if (sentence.length() > LONGEST_IN_SHORT) {
                int end = sentence.lastIndexOf(' ', LONGEST_IN_SHORT);
                one = sentence.substring(0, end > 0 ? end : LONGEST_IN_SHORT).replaceFirst("[,;:(`]+$", "") + "\u00a0…";
            }
            length += one.length();
            if (length > ALL_IN_SHORT) {
                break;
            }
            inShort.add(one);
        }
        return inShort;
    }

    private String titled(String what) {
        return what + ", " + printable.dossier().label().cellName();
    }

    private String words(String key) {
        String phrase = words.get(key);
        if (phrase == null) {
            throw new IllegalStateException("no words for " + key);
        }
        return phrase;
    }

    /** Which tags have a working to link to, so that a number can be followed to where it was made. */
    private static Map<String, Boolean> workings(List<Chapter> chapters) {
        Map<String, Boolean> tags = new HashMap<>();
        for (Chapter chapter : chapters) {
            collectWorkings(chapter.blocks(), tags);
        }
        return tags;
    }

    private static void collectWorkings(List<Block> blocks, Map<String, Boolean> tags) {
        for (Block block : blocks) {
            if (block instanceof Block.Working working) {
                tags.put(working.tag(), true);
            } else if (block instanceof Block.Section section) {
                collectWorkings(section.blocks(), tags);
            } else if (block instanceof Block.Box box) {
                collectWorkings(box.blocks(), tags);
            }
        }
    }
}
