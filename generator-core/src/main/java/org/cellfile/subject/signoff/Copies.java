package org.cellfile.subject.signoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * What a copy of the file that leaves the plant holds.
 *
 * @param hold {@code everything} (the default) or {@code no-internal-parts}
 * @param carried digests of the chapters of which something was left out, where this description is itself such a copy
 */
public record Copies(Stated<String> hold, Map<String, String> carried) {

    /** Nothing is left out. */
    public static final String EVERYTHING = "everything";

    /** Key holders, places of spare actuators and what is told of persons are left out. */
    public static final String NO_INTERNAL_PARTS = "no-internal-parts";

    public static Copies read(Section top) {
        Stated<String> hold = top.sectionIfStated("copies")
                .map(section -> {
                    Stated<String> word = section.word("hold", Set.of(EVERYTHING, NO_INTERNAL_PARTS));
                    section.close();
                    return word;
                })
                .orElseGet(() -> new Stated.Missing<>(top.where(), "hold"));
        Map<String, String> carried = new LinkedHashMap<>();
        List<Section> leftOut = top.listIfStated("left-out");
        for (Section section : leftOut) {
            Stated<String> chapter = section.text("chapter");
            Stated<String> digest = section.text("digest");
            section.close();
            chapter.value().ifPresent(one -> carried.put(one, digest.characters()));
        }
        return new Copies(hold, carried);
    }

    /** True when internal parts are left out. */
    public boolean withoutInternalParts() {
        return hold.value().filter(NO_INTERNAL_PARTS::equals).isPresent();
    }

    /** True when this description is a copy from which something was left out. */
    public boolean isCopy() {
        return !carried.isEmpty();
    }
}
