package org.cellfile.cases;

import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Stated;
import org.cellfile.trace.Given;

/** Values as a file would state them. */
public final class AsWritten {

    private AsWritten() {}

    /** Number, space, unit: {@code 14 mm}. */
    public static Quantity quantity(String text) {
        int space = text.indexOf(' ');
        return Quantity.of(
                text.substring(0, space), Unit.of(text.substring(space + 1)).orElseThrow());
    }

    /** The same, stated somewhere. */
    public static Stated<Quantity> stated(String text) {
        return new Stated.Written<>(
                quantity(text), SourceFile.unread("typed.yaml").whole(), text);
    }

    /** The same, under a symbol. */
    public static Given given(String symbol, String text) {
        return new Given(symbol, symbol, stated(text));
    }

    /** A value that was due and is not there. */
    public static Given missing(String symbol) {
        return new Given(
                symbol,
                symbol,
                new Stated.Missing<>(SourceFile.unread("typed.yaml").whole(), symbol));
    }
}
