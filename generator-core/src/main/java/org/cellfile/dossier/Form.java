package org.cellfile.dossier;

import java.util.List;

/**
 * A blank form, filled in by hand at the machine.
 *
 * @param id a stable word, also the file's name
 * @param title what it is for
 */
public record Form(String id, String title, List<Block> blocks) {}
