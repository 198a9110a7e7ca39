package org.cellfile.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.cellfile.finding.FindingId;
import org.cellfile.render.pdf.Embedded;

/** Takes the embedded files out of a PDF that nobody vouches for. */
final class AttachedFiles {

    /** An embedded file has a name under which it cannot be saved, or is not embedded as this program does. */
    static final FindingId ATTACHMENT = new FindingId("audit.attachment");

    private static final int MOST = 300;
    private static final int LONGEST_NAME = 200;
    private static final int DEEPEST = 10;
    private static final COSName ASSOCIATED = COSName.getPDFName("AF");
    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");

    private final String file;
    private final Inflated contents;
    private final Map<String, COSDictionary> found = new LinkedHashMap<>();
    private final Set<String> unlike = new HashSet<>();
    private int nodes;

    AttachedFiles(String file) {
        this.file = file;
        this.contents = new Inflated(file, "embedded files", 8 << 20, 32L << 20);
    }

    /** All of them, in the order of the file. */
    List<Embedded> of(COSDictionary catalog) throws IOException, Refusal {
        COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
        COSDictionary tree = names == null ? null : names.getCOSDictionary(COSName.EMBEDDED_FILES);
        if (tree != null) {
            walk(tree, 0);
        }
        COSArray associated = catalog.getCOSArray(ASSOCIATED);
        if (associated != null) {
            for (int i = 0; i < associated.size(); i++) {
                COSBase one = associated.getObject(i);
                if (found.values().stream().noneMatch(known -> known == one)) {
                    throw refused("one is associated with the pages and does not stand in the list of embedded files");
                }
            }
        }
        List<Embedded> all = new ArrayList<>();
        for (Map.Entry<String, COSDictionary> one : found.entrySet()) {
            all.add(embedded(one.getKey(), one.getValue()));
        }
        return all;
    }

    private void walk(COSDictionary node, int depth) throws Refusal {
        if (++nodes > MOST) {
            throw tooMany(); // a list of lists without a name in it
        }
        if (depth > DEEPEST) {
            throw refused("the list of them is nested deeper than " + DEEPEST + " times");
        }
        COSArray named = node.getCOSArray(COSName.NAMES);
        if (named != null) {
            for (int i = 0; i + 1 < named.size(); i += 2) {
                if (!(named.getObject(i) instanceof COSString name
                        && named.getObject(i + 1) instanceof COSDictionary specification)) {
                    throw refused("an entry in the list of them is not a name and a file");
                }
                add(name.getString(), specification);
            }
        }
        COSArray kids = node.getCOSArray(COSName.KIDS);
        if (kids != null) {
            for (int i = 0; i < kids.size(); i++) {
                if (kids.getObject(i) instanceof COSDictionary kid) {
                    walk(kid, depth + 1);
                }
            }
        }
    }

    private void add(String name, COSDictionary specification) throws Refusal {
        if (!canBeSaved(name)) {
            throw refused("`" + name + "` is no name of a file below a folder");
        }
        if (found.putIfAbsent(name, specification) != null || !unlike.add(name.toLowerCase(java.util.Locale.ROOT))) {
            throw refused("two of them have the name `" + name + "`");
        }
        if (found.size() > MOST) {
            throw tooMany();
        }
    }

    /** Forward slashes between plain names: nothing that leads out of a folder on any machine. */
    static boolean canBeSaved(String name) {
        if (name.isEmpty() || name.length() > LONGEST_NAME || name.matches("(?s).*[\\p{Cc}\\p{Cf}\\\\:*?\"<>|].*")) {
            return false;
        }
        for (String part : name.split("/", -1)) {
            if (part.isEmpty() || part.startsWith(".") || part.endsWith(".") || !part.equals(part.strip())) {
                return false;
            }
        }
        return true;
    }

    private Embedded embedded(String name, COSDictionary specification) throws IOException, Refusal {
        COSDictionary streams = specification.getCOSDictionary(COSName.EF);
        COSStream stream = streams == null ? null : streams.getCOSStream(COSName.F);
        if (stream == null || streams.size() != 2 || streams.getCOSStream(COSName.UF) != stream) {
            throw refused("`" + name + "` holds not one and the same content for every reader program");
        }
        for (COSName key : List.of(COSName.F, COSName.UF)) {
            if (!name.equals(specification.getString(key))) {
                throw refused("`" + name + "` has a second name");
            }
        }
        return new Embedded(
                name,
                String.valueOf(stream.getNameAsString(COSName.SUBTYPE)),
                contents.of(stream),
                String.valueOf(specification.getString(COSName.DESC)),
                String.valueOf(specification.getNameAsString(RELATIONSHIP)));
    }

    private Refusal refused(String what) {
        return Refusal.of(
                ATTACHMENT,
                file,
                "the embedded files are not as this program embeds them: " + what,
                "take none of them out with other programs before you know who made the file");
    }

    private Refusal tooMany() {
        return Refusal.of(
                Inflated.TOO_MUCH,
                file,
                "more than " + MOST + " files are embedded",
                "a safety file holds far fewer; see who made this one before anything else is done with it");
    }
}
