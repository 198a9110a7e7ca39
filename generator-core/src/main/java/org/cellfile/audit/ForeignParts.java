package org.cellfile.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;

/**
 * What a reader program would obey or show, and this program never writes: scripts, actions, forms, notes on pages, layers. What
 * is written is listed; everything else is foreign.
 */
final class ForeignParts {

    static final FindingId FOREIGN = new FindingId("audit.foreign-part");

    private static final Set<String> CATALOG = Set.of(
            "Type",
            "Version",
            "Pages",
            "Metadata",
            "MarkInfo",
            "Lang",
            "ViewerPreferences",
            "OutputIntents",
            "StructTreeRoot",
            "Outlines",
            "Names",
            "AF");
    private static final Set<String> NAMES = Set.of("EmbeddedFiles");
    private static final Set<String> OUTLINE =
            Set.of("Type", "Count", "Dest", "First", "Last", "Next", "Parent", "Prev", "SE", "Title");
    private static final Set<String> PAGE =
            Set.of("Type", "Annots", "Contents", "MediaBox", "Parent", "Resources", "StructParents", "Tabs");
    private static final Set<String> PAGES = Set.of("Type", "Count", "Kids", "Parent");
    private static final Set<String> RESOURCES = Set.of("Font", "Properties", "XObject");
    private static final Set<String> LINK =
            Set.of("Type", "Subtype", "A", "BS", "Contents", "F", "Rect", "StructParent");
    private static final Set<String> STEP = Set.of("Type", "S", "D");
    private static final Set<String> FORM =
            Set.of("Type", "Subtype", "BBox", "Filter", "Length", "Matrix", "Resources");

    /** What people call the more dangerous ones. */
    private static final Map<String, String> CALLED = Map.of(
            "JavaScript", "JavaScript",
            "OpenAction", "an action on opening",
            "AA", "actions of its own accord",
            "AcroForm", "a form to fill in",
            "OCProperties", "layers that can be hidden",
            "Launch", "an action that starts a program",
            "URI", "an address on the network",
            "RichMedia", "moving pictures or sound",
            "Widget", "a field of a form",
            "FileAttachment", "a file pinned to a page");

    private static final int MOST_OUTLINES = 20_000;

    /** Of the tree of pages; a page that stands in a ring must not be followed without end. */
    private static final int HIGHEST = 20;

    private final String file;
    private final Set<String> told = new LinkedHashSet<>();

    ForeignParts(String file) {
        this.file = file;
    }

    /** Looks at what belongs to the file as a whole. */
    void catalog(COSDictionary catalog) {
        only(CATALOG, catalog, "");
        COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
        if (names != null) {
            only(NAMES, names, "");
        }
        COSDictionary outlines = catalog.getCOSDictionary(COSName.OUTLINES);
        if (outlines != null) {
            outline(outlines);
        }
    }

    private void outline(COSDictionary root) {
        List<COSDictionary> open = new ArrayList<>(List.of(root));
        for (int seen = 0; !open.isEmpty(); seen++) {
            COSDictionary item = open.remove(open.size() - 1);
            if (seen > MOST_OUTLINES) {
                told.add("more than " + MOST_OUTLINES + " bookmarks");
                return;
            }
            only(OUTLINE, item, " in the bookmarks");
            for (COSName next : List.of(COSName.FIRST, COSName.NEXT)) {
                COSDictionary further = item.getCOSDictionary(next);
                if (further != null) {
                    open.add(further);
                }
            }
        }
    }

    /** Looks at one page. */
    void page(COSDictionary page, int number) {
        String where = " on page " + number;
        only(PAGE, page, where);
        COSDictionary above = page.getCOSDictionary(COSName.PARENT);
        for (int height = 0; above != null && height < HIGHEST; height++) {
            only(PAGES, above, where);
            above = above.getCOSDictionary(COSName.PARENT);
        }
        COSDictionary resources = page.getCOSDictionary(COSName.RESOURCES);
        if (resources != null) {
            only(RESOURCES, resources, where);
            COSDictionary drawn = resources.getCOSDictionary(COSName.XOBJECT);
            if (drawn != null) {
                for (COSName name : drawn.keySet()) {
                    COSDictionary one = drawn.getCOSDictionary(name);
                    if (one == null || !COSName.FORM.equals(one.getCOSName(COSName.SUBTYPE))) {
                        told.add("a picture" + where);
                    } else {
                        only(FORM, one, where);
                    }
                }
            }
        }
        COSArray notes = page.getCOSArray(COSName.ANNOTS);
        if (notes != null) {
            for (int i = 0; i < notes.size(); i++) {
                note(notes.getObject(i), where);
            }
        }
    }

    private void note(COSBase note, String where) {
        if (!(note instanceof COSDictionary link)) {
            return;
        }
        String sort = String.valueOf(link.getNameAsString(COSName.SUBTYPE));
        if (!sort.equals("Link")) {
            told.add(CALLED.getOrDefault(sort, "a note of the sort `" + sort + "`") + where);
            return;
        }
        only(LINK, link, where);
        COSDictionary action = link.getCOSDictionary(COSName.A);
        if (action != null) {
            String does = String.valueOf(action.getNameAsString(COSName.S));
            if (does.equals("GoTo")) {
                only(STEP, action, where);
            } else {
                told.add(CALLED.getOrDefault(does, "an action `" + does + "`") + where);
            }
        }
    }

    /** Notes something else that was met. */
    void met(String what) {
        told.add(what);
    }

    private void only(Set<String> known, COSDictionary dictionary, String where) {
        for (COSName key : dictionary.keySet()) {
            if (!known.contains(key.getName())) {
                told.add(CALLED.getOrDefault(key.getName(), "a part `" + key.getName() + "`") + where);
            }
        }
    }

    /** One finding for each part. */
    List<Finding> findings() {
        return told.stream()
                .map(what -> Refusal.finding(
                        FOREIGN,
                        file,
                        "the file holds " + what + ", which this program never writes",
                        "open it only in a reader program that runs nothing, and ask whoever handed it over for the file as it"
                                + " was made"))
                .toList();
    }
}
