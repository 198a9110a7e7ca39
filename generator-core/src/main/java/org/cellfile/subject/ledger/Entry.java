package org.cellfile.subject.ledger;

import java.util.Optional;
import org.cellfile.claim.Workings;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;

/**
 * One derived value as it was written down.
 *
 * @param tag thing and name, as in {@code curtain-lift.separation-distance}
 * @param value as printed: a number, or a performance level as in {@code PL d}
 * @param unit of the number; {@code 1} where it has none
 * @param working symbol, formula and figures in one line. It is kept to be shown beside a later one and is not held against it:
 *     what a formula is called and how it is written may change without any value changing
 */
record Entry(Stated<String> tag, Stated<String> value, Stated<String> unit, Stated<String> working, Span where) {

    private static final String NO_UNIT = "1";

    static Entry read(Section section) {
        return new Entry(
                section.text("tag"),
                section.text("value"),
                section.text("unit"),
                section.text("working"),
                section.where());
    }

    /** Number and unit as they are printed; empty when either could not be read. */
    Optional<String> shown() {
        return value.value()
                .flatMap(number -> unit.value().map(symbol -> symbol.equals(NO_UNIT) ? number : number + " " + symbol));
    }

    /** Where it differs from a value: at its unit, if that alone differs. */
    Span where(Quantity recomputed) {
        return value.characters().equals(number(recomputed)) ? unit.where() : value.where();
    }

    /** The line of a value that is written down now. */
    static String line(Derived derived, Quantity value) {
        return "  - {tag: " + derived.tag() + ", value: " + quoted(number(value)) + ", unit: " + unit(value)
                + ", working: " + quoted(Workings.line(derived)) + "}\n";
    }

    /** The characters of a value before its unit. */
    private static String number(Quantity value) {
        String text = value.toString();
        return withoutUnit(value)
                ? text
                : text.substring(0, text.length() - value.unit().symbol().length() - 1);
    }

    private static String unit(Quantity value) {
        String symbol = withoutUnit(value) ? NO_UNIT : value.unit().symbol();
        return symbol.matches("[A-Za-z0-9][A-Za-z0-9/]*") ? symbol : quoted(symbol);
    }

    /** A level stands after the word that tells its sort, and has no unit. */
    private static boolean withoutUnit(Quantity value) {
        return value.unit().symbol().isEmpty() || value.unit().equals(Unit.LEVEL);
    }

    /** In double quotes, as YAML reads it back. */
    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
