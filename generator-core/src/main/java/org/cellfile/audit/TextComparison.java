package org.cellfile.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Holds what pages say against what they must say: every letter in order, and nothing besides what the layout repeats or adds.
 * Where they part, the nearest place is looked for from which both go on alike.
 */
final class TextComparison {

    /**
     * A place at which pages say something else.
     *
     * @param page from 1
     * @param says the words on the page; empty when words are missing there
     * @param due the words that are due; empty when the page has words too many
     */
    record Difference(int page, String says, String due) {}

    /** The number of a page as it is written on a page. */
    private record Written(int page, String number) {}

    /** So many letters alike are no chance. */
    private static final int ALIKE = 16;

    /** How far ahead both are searched for a place where they go on alike: some ten full pages. */
    private static final int FARTHEST = 40_000;

    /** Letters of what stands around, by which a reader finds the place. */
    private static final int AROUND = 14;

    /** Pages that differ at more places are another file; they are not searched any further. */
    private static final int MOST = 100;

    /** What is shown of a long difference. */
    private static final int SHOWN = 60;

    private final DueText due;
    private final Letters text = new Letters();
    private final BitSet begins = new BitSet();
    private final List<Integer> pageStarts = new ArrayList<>();
    private final List<Difference> differences = new ArrayList<>();
    private int[] placed = {};
    private final Map<Integer, Written> numbers = new HashMap<>();
    private int counted;

    private TextComparison(DueText due) {
        this.due = due;
    }

    /** Every difference in the order of the pages. */
    static List<Difference> of(DueText due, List<PageText> pages) {
        TextComparison comparison = new TextComparison(due);
        comparison.margins(pages);
        comparison.texts(pages);
        comparison.drawings(pages);
        comparison.differences.sort(java.util.Comparator.comparingInt(Difference::page));
        return List.copyOf(comparison.differences);
    }

    private void margins(List<PageText> pages) {
        for (PageText page : pages) {
            String wanted = due.margin(page.number(), pages.size());
            if (!Letters.withoutSpaces(page.margin()).equals(wanted)) {
                differences.add(new Difference(page.number(), page.margin().strip(), wanted));
            }
        }
    }

    private void drawings(List<PageText> pages) {
        DueText none = DueText.of("<html/>");
        TextComparison inDrawings = new TextComparison(none);
        for (PageText page : pages) {
            inDrawings.begin(page, true);
        }
        inDrawings.run(due.drawings());
        differences.addAll(inDrawings.differences);
    }

    private void texts(List<PageText> pages) {
        for (PageText page : pages) {
            begin(page, false);
        }
        run(due.text());
        pageNumbers();
    }

    private void begin(PageText page, boolean drawing) {
        pageStarts.add(text.length());
        for (PageText.Run run : page.runs()) {
            if (run.drawing() == drawing) {
                begins.set(text.length());
                text.add(run.text());
            }
        }
    }

    private void run(Letters wanted) {
        int i = 0;
        int j = 0;
        int page = 0;
        placed = new int[wanted.length() + 1];
        while (i < wanted.length() || j < text.length()) {
            while (page < pageStarts.size() && pageStarts.get(page) <= j) {
                page++;
                if (pageStarts.get(page - 1) == j && !alike(wanted, i, j)) {
                    j = repeated(i, j);
                }
            }
            Optional<DueText.PageNumber> number = due.pageNumber(i);
            if (number.isPresent() && !numbers.containsKey(i)) {
                j = number(number.get(), j, page);
                continue; // the number may have been the last on its page
            }
            placed[i] = page;
            if (i < wanted.length() && j < text.length() && wanted.at(i) == text.at(j)) {
                i++;
                j++;
                continue;
            }
            int[] on = differences.size() < MOST ? goesOn(wanted, i, j) : new int[] {wanted.length(), text.length()};
            differences.add(new Difference(Math.max(page, 1), shown(text, j, on[1]), shown(wanted, i, on[0])));
            i = on[0];
            j = on[1];
        }
    }

    private static String shown(Letters letters, int from, int to) {
        return letters.words(from, Math.min(to, from + SHOWN), AROUND) + (to > from + SHOWN ? " …" : "");
    }

    /** True when both go on alike for a while; numbers of pages end the look ahead. */
    private boolean alike(Letters wanted, int i, int j) {
        for (int k = 0; k < ALIKE; k++) {
            if (i + k >= wanted.length() || (k > 0 && due.pageNumber(i + k).isPresent())) {
                return true;
            }
            if (j + k >= text.length() || wanted.at(i + k) != text.at(j + k)) {
                return false;
            }
        }
        return true;
    }

    /** Passes over what the layout puts at the beginning of a page: the head of a table, or numbers of a list. */
    private int repeated(int i, int j) {
        Optional<String> head = due.headRepeatedAt(i);
        if (head.isPresent() && text.startsWith(head.get(), j)) {
            return j + head.get().length();
        }
        int after = j;
        while (counted < due.numbered() && text.startsWith((counted + 1) + ".", after)) {
            counted++;
            after += (counted + ".").length();
        }
        return after;
    }

    /** Takes the number of a page from what is written; which one is due is known when everything has its place. */
    private int number(DueText.PageNumber number, int from, int page) {
        int j = from;
        if (number.before().equals(".")) {
            while (j < text.length() && text.at(j) == '.') {
                j++;
            }
        } else if (text.startsWith(number.before(), j)) {
            j += number.before().length();
        }
        int digits = j;
        while (j < text.length() && Character.isDigit(text.at(j)) && (j == digits || !begins.get(j))) {
            j++;
        }
        numbers.put(number.place(), new Written(page, text.part(digits, j)));
        return j;
    }

    private void pageNumbers() {
        due.pageNumbers().forEach((place, number) -> {
            Optional<Integer> page = due.place(number.target()).map(to -> placed[to]);
            Written written = numbers.get(place);
            if (written != null
                    && page.isPresent()
                    && page.get() > 0
                    && !written.number().equals(String.valueOf(page.get()))) {
                differences.add(new Difference(
                        Math.max(1, written.page()),
                        "page " + written.number(),
                        "page " + page.get() + " for `" + number.target() + "`"));
            }
        });
    }

    /** The nearest places from which both go on alike; their ends when there are none. */
    private int[] goesOn(Letters wanted, int i, int j) {
        Map<String, Integer> ahead = new HashMap<>();
        for (int l = Math.min(text.length() - ALIKE, j + FARTHEST); l >= j; l--) {
            ahead.put(text.part(l, l + ALIKE), l);
        }
        int[] nearest = {wanted.length(), text.length()};
        int best = Integer.MAX_VALUE;
        for (int k = i; k <= Math.min(wanted.length() - ALIKE, i + FARTHEST) && k - i < best; k++) {
            Integer l = ahead.get(wanted.part(k, k + ALIKE));
            if (l != null && l - j + k - i < best) {
                best = l - j + k - i;
                nearest = new int[] {k, l};
            }
        }
        return nearest;
    }
}
