package org.cellfile.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;

/** The known word nearest to one that is not known. */
public final class Nearest {

    /** A longer word is no slip of a known one, and comparing it would cost time and memory without end. */
    private static final int LONGEST = 100;

    private Nearest() {}

    /** The nearest word, if one is near enough to have been meant. */
    public static Optional<String> to(String word, Collection<String> known) {
        int reach = Math.min(word.length() - 1, Math.max(2, word.length() / 3));
        return known.stream()
                .filter(candidate -> Math.abs(candidate.length() - word.length()) <= reach && word.length() <= LONGEST)
                .filter(candidate -> distance(word, candidate) <= reach)
                .min(Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                        .thenComparing(candidate -> !candidate.equalsIgnoreCase(word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The known words in order, the nearest named first. */
    public static String listed(String word, Collection<String> known) {
        String all = known.stream().sorted().collect(Collectors.joining("`, `", "`", "`"));
        return to(word, known)
                .filter(near -> known.size() > 1)
                .map(near -> "`" + near + "` is nearest; all: " + all)
                .orElse(all);
    }

    /** How many letters must be added, dropped, changed or swapped with a neighbour (Damerau and Levenshtein). */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j] + 1, Math.min(cost[i][j - 1] + 1, cost[i - 1][j - 1] + change));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
