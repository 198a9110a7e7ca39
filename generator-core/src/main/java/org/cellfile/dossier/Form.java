package org.cellfile.dossier;

import java.util.List;

/**
 * A blank form, filled in by hand at the machine.
 *
 * @param id a stable word, also the file's name
 * @param title what it is for
 * @param wide true when its pages lie on their side
 */
public record Form(String id, String title, boolean wide, List<Block> blocks) {}
