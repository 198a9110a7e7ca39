package org.cellfile.dossier;

import java.util.List;

/**
 * A numbered chapter of the safety file.
 *
 * @param id a stable word, used as anchor and in comparisons
 * @param title printed, without its number: the order in the dossier numbers it
 */
public record Chapter(String id, String title, List<Block> blocks) {}
