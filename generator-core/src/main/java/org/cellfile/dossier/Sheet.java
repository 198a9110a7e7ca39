package org.cellfile.dossier;

import java.util.List;
import java.util.Map;

/**
 * One page posted at the cell. Whatever is said on it stands there once in each of its languages, in their order.
 *
 * @param id which sheet it is
 * @param languages BCP 47 language tags, at least one
 * @param place on the plan at which this print hangs; empty where one print hangs at all places
 * @param paper {@code A4}, {@code A3}, {@code Letter} or {@code Tabloid}
 * @param title what it is for
 * @param places where it is to be posted
 * @param marks what must be known before the page is trusted, printed above everything else
 * @param panels in reading order
 * @param foot which it is, and who answers for it
 * @param displays what to compare at the machine, also in the foot
 * @param dates the days in its foot: they are printed, and a sheet of another day says the same
 * @param validUntil the last day on which it is valid, as in 2026-03-31; empty when nothing falls due
 * @param frame the fixed words around it, in place of those of the safety file
 */
public record Sheet(
        String id,
        List<String> languages,
        String place,
        String paper,
        List<String> title,
        List<List<String>> places,
        List<List<String>> marks,
        List<Panel> panels,
        List<Block.Fact> foot,
        List<Block.Fact> displays,
        List<Block.Fact> dates,
        String validUntil,
        Map<String, String> frame) {

    /**
     * A headed part of a sheet.
     *
     * @param id a stable word
     * @param sign drawn beside it; of its kind
     * @param numbered true when the lines are steps to be done in order
     * @param drawings below the lines
     */
    public record Panel(
            String id,
            Kind kind,
            Sign sign,
            List<String> title,
            boolean numbered,
            List<List<String>> lines,
            List<Block.Drawing> drawings) {

        /** Without drawings. */
        public Panel(String id, Kind kind, Sign sign, List<String> title, boolean numbered, List<List<String>> lines) {
            this(id, kind, sign, title, numbered, lines, List.of());
        }

        /** With the plain sign of its kind. */
        public Panel(String id, Kind kind, List<String> title, boolean numbered, List<List<String>> lines) {
            this(id, kind, Sign.of(kind), title, numbered, lines);
        }
    }

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

    /** Which print of which sheet it is, in whatever languages. */
    public String name() {
        return name(id, place);
    }

    /** That of such a print. */
    public static String name(String id, String place) {
        return place.isEmpty() ? id : id + "-at-" + place;
    }

    /** The name of its file, without an ending; also what it is called where one page of the cell is named. */
    public String file() {
        return name() + "-" + String.join("-", languages);
    }
}
