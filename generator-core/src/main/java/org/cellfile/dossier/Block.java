package org.cellfile.dossier;

import java.util.List;
import java.util.Map;

/** One piece of a chapter. The text in it is plain text: mark-up characters in it are printed, never obeyed. */
public sealed interface Block {

    /** A paragraph of running text. */
    record Paragraph(String text) implements Block {}

    /** Short statements, one a line, unordered. */
    record Points(List<String> items) implements Block {}

    /** Label and value pairs, as on a type plate. */
    record Facts(List<Fact> facts) implements Block {}

    /**
     * One label and its value.
     *
     * @param label what it is
     * @param value as printed, with its unit
     * @param remark where it comes from or what holds for it; empty if there is nothing to say
     */
    record Fact(String label, String value, String remark) {
        public Fact(String label, String value) {
            this(label, value, "");
        }
    }

    /**
     * A table. Rows are not split across pages and the head is repeated on each page.
     *
     * @param caption what the table shows, printed above it
     * @param columns heads, alignment and relative widths
     * @param rows one string a column
     */
    record Table(String caption, List<Column> columns, List<List<String>> rows) implements Block {}

    /**
     * A column of a table.
     *
     * @param title the head
     * @param figures true when the column holds numbers, which are set right-aligned
     * @param share relative width; the shares of a table's columns need not add up to anything
     */
    record Column(String title, boolean figures, int share) {
        public static Column text(String title, int share) {
            return new Column(title, false, share);
        }

        public static Column figures(String title, int share) {
            return new Column(title, true, share);
        }
    }

    /**
     * How one derived value was come by, so that a reader with a pocket calculator can repeat it.
     *
     * @param tag what `explain` calls it, for example {@code curtain-north.separation-distance}
     * @param name what it is, in words
     * @param symbol as the standard writes it
     * @param formula the right-hand side in symbols
     * @param figures the same with the numbers in place
     * @param result the unrounded value with its unit; empty when it could not be computed
     * @param rounded the value carried on, with the direction and step of rounding; empty when none was needed
     * @param clause the edition and clause, or empty
     * @param steps one line for each symbol of the formula
     * @param remarks branches taken and not taken, rows of tables, and which of several governed
     * @param agreement what was recorded beside it and whether the recomputation agrees; empty when nothing was recorded
     */
    record Working(
            String tag,
            String name,
            String symbol,
            String formula,
            String figures,
            String result,
            String rounded,
            String clause,
            List<Step> steps,
            List<String> remarks,
            String agreement)
            implements Block {}

    /**
     * One symbol in a formula.
     *
     * @param symbol as written in the formula
     * @param value with unit
     * @param name what it is
     * @param origin file, line and column, or clause and standing, or the tag of another derived value
     */
    record Step(String symbol, String value, String name, String origin) {}

    /**
     * A drawing, made by a template from figures.
     *
     * @param template path of the SVG template below the template root, for example {@code drawings/stop-runs.svg.ftl}
     * @param caption printed below it; empty when the heading above it says enough
     * @param alternative what a person who cannot see it is told
     * @param data plain strings, {@link java.math.BigDecimal}s, booleans, lists and maps of these
     */
    record Drawing(String template, String caption, String alternative, Map<String, Object> data) implements Block {}

    /** A framed note that must not be overlooked. */
    record Box(Tone tone, String title, List<Block> blocks) implements Block {}

    /** What a box is about. */
    enum Tone {
        /** a hazard to persons */
        CAUTION,
        /** an installed cell that falls short, as declared by a named person */
        DEVIATION,
        /** a remark */
        NOTE
    }

    /**
     * A section of a chapter about one thing of the cell.
     *
     * @param tag the thing's tag, printed beside the title; empty when the section is not about one thing
     * @param title the heading
     */
    record Section(String tag, String title, List<Block> blocks) implements Block {}

    /**
     * A line to sign in ink.
     *
     * @param words what the signature says, for example "Checked"
     * @param who the role or the person expected to sign
     */
    record SignatureLine(String words, String who) implements Block {}

    /**
     * A table to fill in by hand. Rows are not split across pages, the head is repeated with the caption on each page, and no row
     * is too low to write in.
     *
     * @param caption what the table is about; empty when the heading says it
     * @param columns heads and relative widths
     * @param rows one entry a column
     */
    record WriteInTable(String caption, List<Column> columns, List<List<Entry>> rows) implements Block {}

    /** Single matters to fill in by hand, each beside its label. */
    record WriteInLines(List<Line> lines) implements Block {}

    /** One of them. */
    record Line(String label, Entry entry) {}

    /**
     * One place of a form. There is room to write where a unit stands, and where nothing else does.
     *
     * @param printed what stands there already; empty when nothing does
     * @param unit of what is to be written; empty when it has none
     * @param choices words, each beside an empty square to tick
     */
    record Entry(String printed, String unit, List<String> choices) {

        /** Nothing to fill in. */
        public static Entry printed(String text) {
            return new Entry(text, "", List.of());
        }

        /** Room to write. */
        public static Entry room() {
            return printed("");
        }

        /** Squares to tick. */
        public static Entry tick(String... choices) {
            return new Entry("", "", List.of(choices));
        }
    }
}
