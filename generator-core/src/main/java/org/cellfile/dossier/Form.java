package org.cellfile.dossier;

import java.util.List;
import java.util.Map;

/**
 * A blank form, filled in by hand at the machine.
 *
 * @param id a stable word, also the file's name; with the tag of its language where there is one form for each
 * @param title what it is for
 * @param wide true when its pages lie on their side
 * @param language its tag; empty for that of the file
 * @param frame fixed words around its text that are others than those of the file, by their keys
 */
public record Form(
        String id, String title, boolean wide, List<Block> blocks, String language, Map<String, String> frame) {

    /** One in the language of the file. */
    public Form(String id, String title, boolean wide, List<Block> blocks) {
        this(id, title, wide, blocks, "", Map.of());
    }
}
