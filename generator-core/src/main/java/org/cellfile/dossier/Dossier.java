package org.cellfile.dossier;

import java.util.List;

/**
 * Everything printable of one cell in one state.
 *
 * @param values every derived value, sorted by tag: what `explain` knows and what a later revision is compared by
 */
public record Dossier(Label label, List<Chapter> chapters, List<Sheet> sheets, List<Value> values) {

    /**
     * One derived value as printed.
     *
     * @param tag thing and name
     * @param value number and unit as printed, or empty when it could not be computed
     * @param exact the value calculation went on with
     */
    public record Value(String tag, String value, String exact) {}
}
