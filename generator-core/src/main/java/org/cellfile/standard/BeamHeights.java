package org.cellfile.standard;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The heights at which ISO 13855:2010 lets separate beams stand, by their number (Pilz PSEN op2H operating manual, p. 11; Leuze
 * Safety at Work handbook, multiple beam devices; GT Engineering, detection zone orthogonal to the direction of approach).
 */
final class BeamHeights {

    private static final Map<Integer, List<String>> BY_NUMBER = Map.of(
            1, List.of("750"),
            2, List.of("400", "900"),
            3, List.of("300", "700", "1100"),
            4, List.of("300", "600", "900", "1200"));

    private BeamHeights() {}

    /** Those for so many beams, from the lowest to the highest; none for a number it does not know. */
    static List<Quantity> of(int number) {
        return BY_NUMBER.getOrDefault(number, List.of()).stream()
                .map(Quantity::millimetres)
                .toList();
    }

    /**
     * What is known of beams where they stand at these heights; withheld where they do not.
     *
     * @param rule whose rule it is, as the subject of a sentence
     */
    static Term onlyAtListed(String rule, String symbol, Term known, List<Term> heights) {
        return atListed(heights) ? known : Withheld.noRule(symbol, rule + because(heights));
    }

    private static boolean atListed(List<Term> heights) {
        List<Quantity> listed = of(heights.size());
        return listed.size() == heights.size()
                && IntStream.range(0, listed.size())
                        .allMatch(beam -> heights.get(beam)
                                .value()
                                .map(listed.get(beam)::equals)
                                .orElse(true));
    }

    private static String because(List<Term> heights) {
        String found = heights.stream().map(Formula::shown).collect(Collectors.joining(", "));
        List<String> listed = BY_NUMBER.get(heights.size());
        return listed == null
                ? " has no rule for " + heights.size() + " separate beams: it knows one to four"
                : " knows " + (heights.size() == 1 ? "a single beam" : heights.size() + " beams") + " at "
                        + String.join(", ", listed) + " mm only, and these are at " + found;
    }
}
