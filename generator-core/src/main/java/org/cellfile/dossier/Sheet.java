package org.cellfile.dossier;

import java.util.List;

/**
 * One page posted at the cell.
 *
 * @param id a stable word, also the file's name
 * @param title what it is for
 * @param place where it is to be posted
 * @param panels in reading order
 * @param foot short lines for the foot: what to compare at the machine, who answers for it
 */
public record Sheet(String id, String title, String place, List<Panel> panels, List<Block.Fact> foot) {

    /**
     * A headed part of a sheet.
     *
     * @param numbered true when the lines are steps to be done in order
     */
    public record Panel(Kind kind, String title, boolean numbered, List<String> lines) {}

    /** What a panel is for; decides its colour and sign, always beside words. */
    public enum Kind {
        /** what can hurt */
        HAZARD,
        /** what is forbidden */
        PROHIBITION,
        /** what must be done */
        ACTION,
        /** plain information */
        INFORMATION,
        /** what to do in an emergency */
        EMERGENCY
    }
}
