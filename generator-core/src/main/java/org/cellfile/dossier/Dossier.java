package org.cellfile.dossier;

import java.util.List;

/**
 * Everything printable of one cell in one state.
 *
 * @param forms blank forms for the shop floor
 * @param due everything that falls due on a day, the earliest first
 * @param values every derived value, sorted by tag: what `explain` knows and what a later revision is compared by
 */
public record Dossier(
        Label label, List<Chapter> chapters, List<Sheet> sheets, List<Form> forms, List<Due> due, List<Value> values) {

    /**
     * Something that falls due.
     *
     * @param on the last day on which what is there still holds, as in 2026-03-31
     * @param ahead the day from which that is pointed out
     * @param tag of the thing concerned
     * @param what is to be done by then
     * @param source who asks for it
     */
    public record Due(String on, String ahead, String tag, String what, String source) {}

    /**
     * One derived value as printed.
     *
     * @param tag thing and name
     * @param value number and unit as printed, or empty when it could not be computed
     * @param exact the value calculation went on with
     */
    public record Value(String tag, String value, String exact) {}
}
