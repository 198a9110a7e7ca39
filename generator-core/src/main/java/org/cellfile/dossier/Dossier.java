package org.cellfile.dossier;

import java.util.List;

/**
 * Everything printable of one cell in one state.
 *
 * @param madeBy the version of this program that composed it
 * @param forms blank forms for the shop floor
 * @param due everything that falls due on a day, the earliest first
 * @param values every derived value, sorted by tag: what `explain` knows and what a later revision is compared by
 * @param digests what a sign-off of each chapter is bound to, sorted by chapter; that of the whole comes first
 * @param logo of the plant, at the head of each sheet
 * @param releasedBy who released the whole for use by a sign-off that still holds, with role and day; empty when nobody did
 */
public record Dossier(
        Label label,
        String madeBy,
        List<Chapter> chapters,
        List<Sheet> sheets,
        List<Form> forms,
        List<Due> due,
        List<Value> values,
        List<Signable> digests,
        Logo logo,
        String releasedBy) {

    /**
     * What can be signed.
     *
     * @param covers {@link Substance#WHOLE} or a chapter
     * @param digest of its substance
     * @param leftOut true when something of it is not in this copy, so that nobody can recompute the digest from it
     */
    public record Signable(String covers, String digest, boolean leftOut) {}

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
