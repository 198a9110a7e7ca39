package org.cellfile.dossier;

/**
 * What every page says about which cell and which state of it is described.
 *
 * @param cellId the cell's short name, also the name of its output folder
 * @param cellName in words
 * @param site where it stands
 * @param operator who runs it (the plant)
 * @param integrator who built it
 * @param revision of the description
 * @param asOf the day the description speaks of, ISO 8601; the only date a run prints by itself
 * @param page {@code A4} or {@code Letter}
 */
public record Label(
        String cellId,
        String cellName,
        String site,
        String operator,
        String integrator,
        String revision,
        String asOf,
        String page) {}
