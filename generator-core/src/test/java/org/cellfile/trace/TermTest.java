package org.cellfile.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition.Comparison;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Terms compute and write themselves. All figures are constructed. */
class TermTest {

    private static final Term A = AsWritten.given("a", "6 mm");
    private static final Term B = AsWritten.given("b", "4 mm");
    private static final Term N = new Count(Quantity.count(2));
    private static final Term MISSING = AsWritten.missing("m");

    private static Derived derived(String name, Term expression) {
        return new Derived(
                "thing", name, "words of " + name, name, "clause", expression, Rounding.up(Quantity.millimetres("1")));
    }

    private static Reference reference(String id, Standing standing) {
        return new Reference(id, "name of " + id, new Clause("Standard", "cl. 1"), standing);
    }

    /** 2051.304 mm is 80.76 in: Allen-Bradley safety mats, application details, prints the figure in inches. */
    @Test
    void isShownInTheUnitItIsPrintedIn() {
        Derived inches =
                derived("s", AsWritten.given("a", "2051.304 mm")).at(Rounding.up(AsWritten.quantity("0.1 in")));
        assertThat(Formula.shown(inches)).isEqualTo("80.76 in");
        assertThat(inches.rounded()).hasToString("Optional[80.8 in]");
        assertThat(Drawing.of(inches).result()).isEqualTo("80.76 in");
        assertThat(Drawing.of(inches).rounded()).isEqualTo("80.8 in, up to the next 0.1 in");
        assertThat(inches.value()).contains(Quantity.millimetres("2051.304"));
    }

    @Test
    void computesAndWritesItself() {
        check(Sum.of(A, B), "10 mm", "a + b", "6 mm + 4 mm");
        check(new Difference(A, B), "2 mm", "a − b", "6 mm − 4 mm");
        check(new Product(N, A), "12 mm", "2 · a", "2 × 6 mm");
        check(new Quotient(A, N), "3 mm", "a / 2", "6 mm / 2");
        check(Greatest.of(B, A), "6 mm", "max(b; a)", "max(4 mm; 6 mm)");
        check(Least.of(A, B), "4 mm", "min(a; b)", "min(6 mm; 4 mm)");
        check(new Root(new Product(A, A)), "6 mm", "√(a²)", "√(6 mm²)");
        check(derived("S", Sum.of(A, B)), "10 mm", "S", "10 mm");
    }

    private static void check(Term term, String value, String symbols, String figures) {
        assertThat(term.value()).contains(AsWritten.quantity(value));
        assertThat(term.symbols()).isEqualTo(symbols);
        assertThat(term.figures()).isEqualTo(figures);
    }

    @Test
    void bracketsStandWhereTheyMustAndNowhereElse() {
        assertThat(new Product(N, Sum.of(A, B)).symbols()).isEqualTo("2 · (a + b)");
        assertThat(Sum.of(new Product(N, A), B).symbols()).isEqualTo("2 · a + b");
        assertThat(new Difference(A, new Difference(A, B)).symbols()).isEqualTo("a − (a − b)");
        assertThat(new Difference(new Difference(A, B), A).symbols()).isEqualTo("a − b − a");
        assertThat(new Quotient(A, new Product(N, B)).symbols()).isEqualTo("a / (2 · b)");
        assertThat(new Quotient(new Difference(A, B), N).symbols()).isEqualTo("(a − b) / 2");
        assertThat(new Product(new Difference(A, B), new Difference(A, B)).symbols())
                .isEqualTo("(a − b)²");
        assertThat(new Product(N, Sum.of(A)).symbols()).isEqualTo("2 · a");
        assertThat(new Product(N, Greatest.of(A, B)).symbols()).isEqualTo("2 · max(a; b)");
        assertThat(new Difference(A, new Product(N, B)).symbols()).isEqualTo("a − 2 · b");
    }

    @Test
    void manyAlikeAreWrittenOnce() {
        Term first = AsWritten.given("t_i", "1 ms");
        Term last = AsWritten.given("t_i", "5 ms");
        List<Term> five = List.of(first, first, first, first, last);
        assertThat(new Sum(five).symbols()).isEqualTo("Σ t_i");
        assertThat(new Greatest(five).symbols()).isEqualTo("max t_i");
        assertThat(new Least(five).symbols()).isEqualTo("min t_i");
        assertThat(new Sum(five).figures()).isEqualTo("1 ms + … + 5 ms");
        assertThat(new Sum(five.subList(0, 4)).symbols()).isEqualTo("t_i + t_i + t_i + t_i");
        assertThat(new Sum(List.of(first, first, first, first, A)).symbols()).contains("t_i + t_i");
    }

    static Stream<Term> resting() {
        return Stream.of(
                Sum.of(A, MISSING),
                new Difference(A, MISSING),
                new Difference(MISSING, A),
                new Product(MISSING, A),
                new Product(A, MISSING),
                new Quotient(A, MISSING),
                new Quotient(MISSING, A),
                new Quotient(A, new Count(Quantity.count(0))),
                new Root(MISSING),
                Greatest.of(A, MISSING),
                Least.of(A, MISSING),
                new Case(List.of(new Branch(new Condition(MISSING, Comparison.LESS, A), B)), A),
                new Case(List.of(new Branch(new Condition(A, Comparison.AT_MOST, MISSING), B)), A),
                new Withheld("w", "because"),
                derived("D", MISSING));
    }

    @ParameterizedTest
    @MethodSource("resting")
    void whatRestsOnAMissingValueIsMissingAndNeverZero(Term term) {
        assertThat(term.value()).isEmpty();
        assertThat(term.symbols()).isNotEmpty();
    }

    @Test
    void aMissingOperandHasNoGoverning() {
        assertThat(Greatest.of(A, MISSING).governing()).isEmpty();
        assertThat(Least.of(A, MISSING).governing()).isEmpty();
    }

    @Test
    void theFirstConditionThatHoldsDecides() {
        Term small = AsWritten.given("s", "1 mm");
        Condition no = new Condition(A, Comparison.LESS, B);
        Condition equal = new Condition(A, Comparison.LESS, A);
        Condition atMost = new Condition(A, Comparison.AT_MOST, A);
        assertThat(no.holds()).contains(false);
        assertThat(equal.holds()).contains(false);
        assertThat(atMost.holds()).contains(true);
        assertThat(new Condition(B, Comparison.AT_MOST, A).holds()).contains(true);
        assertThat(new Condition(A, Comparison.AT_MOST, B).holds()).contains(false);

        Case first = new Case(List.of(new Branch(atMost, small), new Branch(atMost, B)), A);
        assertThat(first.value()).isEqualTo(small.value());
        assertThat(first.operands()).containsExactly(small);
        assertThat(first.reasons()).containsExactly("6 mm is at most 6 mm, so s is taken");
        Case second = new Case(List.of(new Branch(no, small), new Branch(atMost, Sum.of(A, B))), A);
        assertThat(second.symbols()).isEqualTo("a + b");
        assertThat(new Product(N, second).symbols()).isEqualTo("2 · (a + b)");
        assertThat(second.reasons())
                .containsExactly(
                        "6 mm is not less than 4 mm, so s is not taken", "6 mm is at most 6 mm, so a + b is taken");
        Case none = new Case(List.of(new Branch(no, small)), A);
        assertThat(none.value()).isEqualTo(A.value());
        assertThat(none.reasons()).containsExactly("6 mm is not less than 4 mm, so s is not taken");
        Case sum = new Case(List.of(new Branch(new Condition(Sum.of(A, B), Comparison.AT_MOST, B), small)), A);
        assertThat(sum.reasons().get(0)).isEqualTo("6 mm + 4 mm = 10 mm is more than 4 mm, so s is not taken");
        Case withheld = new Case(List.of(new Branch(no, new Withheld("w", "because"))), A);
        assertThat(withheld.reasons()).isEmpty();
        Case undecided =
                new Case(List.of(new Branch(no, small), new Branch(new Condition(MISSING, Comparison.LESS, A), B)), A);
        assertThat(undecided.reasons()).containsExactly("6 mm is not less than 4 mm, so s is not taken");
        assertThat(undecided.taken()).isEmpty();
        assertThat(undecided.operands()).containsExactly(A);
    }

    @Test
    void whatADerivedValueRestsOnIsFoundThroughAllCalculations() {
        Fixed speed = new Fixed("K", Quantity.count(2), reference("speed", new Standing.Published("book, p. 1")));
        Fixed limit = new Fixed("L", Quantity.millimetres("9"), reference("limit", new Standing.FromMemory("")));
        Lookup cell = new Lookup(
                "C",
                Quantity.millimetres("5"),
                reference("table", new Standing.FromMemory("one cell agrees")),
                List.of(A),
                "row 1");
        Derived lower = derived("low", cell);
        Derived middle = derived("mid", Sum.of(lower, new Product(speed, A)));
        Derived upper = derived(
                "up",
                new Case(List.of(new Branch(new Condition(middle, Comparison.LESS, limit), A)), Sum.of(middle, lower)));
        assertThat(upper.references()).extracting(Reference::id).containsExactlyInAnyOrder("limit", "table", "speed");
        assertThat(upper.below()).containsExactly(middle, lower);
        assertThat(lower.below()).isEmpty();
        assertThat(upper.value()).contains(Quantity.millimetres("22"));
        assertThat(limit.reference().fromMemory()).isTrue();
        assertThat(speed.reference().fromMemory()).isFalse();
        assertThat(limit.reference().standing().words()).isEqualTo("from memory");
        assertThat(cell.reference().standing().words()).isEqualTo("from memory; one cell agrees");
        assertThat(speed.reference().standing().words()).isEqualTo("published: book, p. 1");
    }

    /** One thing rests on the next in every way a term can rest on others, and on nothing else. */
    static Stream<java.util.function.Function<Term, Term>> waysToRest() {
        return Stream.of(
                term -> Sum.of(A, term),
                term -> new Difference(A, term),
                term -> new Difference(term, A),
                term -> new Product(N, term),
                term -> new Product(term, N),
                term -> new Product(term, term),
                term -> new Quotient(term, N),
                term -> new Quotient(A, term),
                term -> new Root(new Product(term, A)),
                term -> Greatest.of(A, term),
                term -> Least.of(A, term),
                term -> new Lookup(
                        "C",
                        Quantity.millimetres("5"),
                        reference("t", new Standing.FromMemory("")),
                        List.of(term),
                        "row"),
                term -> new Case(List.of(new Branch(new Condition(A, Comparison.AT_MOST, A), term)), A),
                term -> new Case(List.of(new Branch(new Condition(A, Comparison.LESS, A), A)), term));
    }

    @ParameterizedTest
    @MethodSource("waysToRest")
    void nothingBelowIsLost(java.util.function.Function<Term, Term> rest) {
        Fixed fixed = new Fixed("F", Quantity.millimetres("3"), reference("bottom", new Standing.FromMemory("")));
        Derived bottom = derived("bottom", fixed);
        Derived middle = derived("middle", Sum.of(bottom, A));
        Derived top = derived("top", rest.apply(middle));
        assertThat(top.below()).containsExactly(middle, bottom);
        assertThat(top.references()).extracting(Reference::id).contains("bottom");
    }

    @Test
    void bothSidesOfAConditionCount() {
        Fixed left = new Fixed("L", Quantity.millimetres("3"), reference("left", new Standing.FromMemory("")));
        Fixed right = new Fixed("R", Quantity.millimetres("2"), reference("right", new Standing.FromMemory("")));
        Derived derived =
                derived("S", new Case(List.of(new Branch(new Condition(left, Comparison.LESS, right), B)), A));
        assertThat(derived.references()).extracting(Reference::id).containsExactly("left", "right");
    }

    @Test
    void derivedValuesAreTheSameByTheirTag() {
        assertThat(derived("S", A)).isEqualTo(derived("S", B)).hasSameHashCodeAs(derived("S", B));
        assertThat(derived("S", A)).isNotEqualTo(derived("T", A)).isNotEqualTo(A);
        assertThat(derived("S", A)).hasToString("thing.S = 6 mm");
        assertThat(derived("S", MISSING)).hasToString("thing.S = not known");
    }

    @Test
    void roundsForPrintAndLikeWhatSomebodyWrote() {
        Derived derived = derived("S", AsWritten.given("a", "1349.2 mm"));
        assertThat(derived.rounded()).contains(Quantity.millimetres("1350"));
        assertThat(derived.roundedLike(AsWritten.quantity("1.4 m"))).contains(AsWritten.quantity("1.4 m"));
        assertThat(derived("S", MISSING).rounded()).isEqualTo(Optional.empty());
    }

    @Test
    void drawsTheFormulaWithWhatHangsFromIt() {
        Fixed speed = new Fixed("K", Quantity.count(2), reference("speed", new Standing.FromMemory("")));
        Derived derived = derived("S", Sum.of(new Product(speed, A), AsWritten.given("C", "0.5 mm")));
        assertThat(Drawing.of(derived).lines())
                .containsExactly(
                        "S = K · a + C                               clause",
                        "    │   │   │",
                        "    │   │   0.5 mm                          typed.yaml:1:1",
                        "    │   6 mm                                typed.yaml:1:1",
                        "    2                                       Standard, cl. 1 (from memory)",
                        "12.5 mm → 13 mm, up to the next 1 mm");
        assertThat(Drawing.of(derived).leaves()).extracting(Leaf::symbol).containsExactly("K", "a", "C");
        assertThat(Drawing.of(derived("W", new Withheld("w", "nobody measured it")))
                        .lines())
                .contains("nobody measured it")
                .noneMatch(line -> line.contains("→"));
        assertThat(Drawing.of(derived("R", A)).lines()).endsWith("6 mm");
    }

    @Test
    void saysWhichGoverned() {
        assertThat(Drawing.of(derived("S", Greatest.of(B, A))).remarks())
                .containsExactly("the greatest governs: a = 6 mm");
        assertThat(Drawing.of(derived("S", Least.of(B, A))).remarks()).containsExactly("the least governs: b = 4 mm");
        assertThat(Drawing.of(derived("S", Least.of(A, B))).remarks()).containsExactly("the least governs: b = 4 mm");
        assertThat(Drawing.of(derived("S", Sum.of(A, Greatest.of(A, B)))).remarks())
                .containsExactly("the greatest governs: a = 6 mm");
        assertThat(Drawing.of(derived("S", new Greatest(Collections.nCopies(5, A))))
                        .remarks())
                .isEmpty();
        assertThat(Drawing.of(derived("S", Sum.of(derived("T", Greatest.of(A, B)), A)))
                        .remarks())
                .isEmpty();
    }

    @Test
    void readingsUnderOneSymbolAreGathered() {
        List<Term> readings = List.of(
                AsWritten.given("t_i", "1 ms"),
                AsWritten.given("t_i", "7 ms"),
                AsWritten.given("t_i", "3 ms"),
                AsWritten.given("t_i", "4 ms"),
                AsWritten.given("t_i", "5 ms"));
        Derived mean = new Derived(
                "thing",
                "mean",
                "mean",
                "m",
                "clause",
                new Quotient(new Sum(readings), new Count(Quantity.count(5))),
                Rounding.up(Quantity.seconds("0.001")));
        assertThat(Drawing.of(mean).leaves())
                .singleElement()
                .extracting(Leaf::value)
                .isEqualTo("5 readings, 1 ms to 5 ms in the order taken");
    }
}
