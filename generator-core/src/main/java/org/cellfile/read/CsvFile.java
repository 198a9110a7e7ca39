package org.cellfile.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Written;

/**
 * A table of numbers beside the YAML: a head that names each column and its unit, as in {@code run,time [ms],distance [mm]},
 * and one line for each row. The first column numbers the rows.
 *
 * <p>Read by hand rather than by a library because every cell must keep its line and column.
 */
public final class CsvFile {

    static final FindingId HEAD = new FindingId("csv.head");
    static final FindingId ROW = new FindingId("csv.row");

    private static final String COUNTER = "run";
    private static final Pattern COLUMN = Pattern.compile("([a-z-]+) \\[([^\\]]+)\\]");
    /** A test of a stop has tens of runs. */
    private static final int MOST_ROWS = 1_000;

    private final SourceFile file;
    private final List<Map<String, Stated<Quantity>>> rows = new ArrayList<>();
    private final Findings findings;

    /** The number of the row before. */
    private int before;

    private CsvFile(SourceFile file, Findings findings) {
        this.file = file;
        this.findings = findings;
    }

    /** The whole file, for findings about all of its rows. */
    public Span where() {
        return file.whole();
    }

    /** The rows that could be read, each by column name. */
    public List<Map<String, Stated<Quantity>>> rows() {
        return List.copyOf(rows);
    }

    /** What begins the path of a row: the table is no key of the cell. */
    public static final String TABLE = "table";

    /** Its head and each of its rows as a statement, whatever they hold. */
    static List<Statement> statements(SourceFile file) {
        List<Statement> statements = new ArrayList<>();
        List<String> lines = file.lines();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                statements.add(Statement.of(
                        TABLE + "/" + Statement.step(file.path()) + "/"
                                + (statements.isEmpty() ? "head" : statements.size()),
                        Stream.of(lines.get(i).split(",", -1))
                                .map(String::strip)
                                .toList(),
                        new Span(file, i + 1, 1, 0).position()));
            }
        }
        return statements;
    }

    static CsvFile read(SourceFile file, Map<String, Dimension> columns, Findings findings) {
        CsvFile csv = new CsvFile(file, findings);
        List<String> lines = file.lines();
        String head = lines.isEmpty() ? "" : lines.get(0);
        Optional<Map<String, String>> named = csv.units(head, columns);
        if (named.isEmpty()) {
            // Runs were taken, though they cannot be read: that is said once, not again as a want of runs.
            lines.stream()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .limit(MOST_ROWS)
                    .forEach(line -> csv.rows.add(Map.of()));
        }
        named.ifPresent(units -> {
            for (int i = 1; i < lines.size() && i <= MOST_ROWS; i++) {
                if (!lines.get(i).isBlank()) {
                    csv.rows.add(csv.row(i + 1, lines.get(i), units, columns));
                }
            }
            if (lines.size() > MOST_ROWS + 1) {
                csv.refuse(ROW, new Span(file, MOST_ROWS + 2, 1, 0), "more than " + MOST_ROWS + " rows stand here", "");
            }
        });
        return csv;
    }

    /** The unit of each column, in the order of the head. */
    private Optional<Map<String, String>> units(String head, Map<String, Dimension> columns) {
        Map<String, String> units = new LinkedHashMap<>();
        String[] titles = head.split(",", -1);
        boolean good = titles[0].strip().equals(COUNTER);
        for (int i = 1; i < titles.length; i++) {
            Matcher column = COLUMN.matcher(titles[i].strip());
            good = good && column.matches() && columns.containsKey(column.group(1));
            if (good) {
                good = units.put(column.group(1), column.group(2)) == null;
            }
        }
        if (good && units.keySet().containsAll(columns.keySet())) {
            return known(head, units, columns) ? Optional.of(units) : Optional.empty();
        }
        StringBuilder due = new StringBuilder(COUNTER);
        columns.forEach((name, dimension) -> due.append(',')
                .append(name)
                .append(" [")
                .append(dimension.equals(Dimension.TIME) ? "ms" : "mm")
                .append(']'));
        refuse(
                HEAD,
                new Span(file, 1, 1, head.codePointCount(0, head.length())),
                "the first line does not name the columns",
                "write `" + due + "`, with the unit of each column in the brackets and commas between");
        return Optional.empty();
    }

    /** True when each column is in a unit of what it holds; otherwise that is reported. */
    private boolean known(String head, Map<String, String> units, Map<String, Dimension> columns) {
        boolean known = true;
        for (Map.Entry<String, String> column : units.entrySet()) {
            Dimension due = columns.getOrDefault(column.getKey(), Dimension.NONE);
            List<String> fitting = Unit.written(due).stream().map(Unit::symbol).toList();
            if (!fitting.contains(column.getValue())) {
                known = false;
                refuse(
                        HEAD,
                        new Span(
                                file,
                                1,
                                head.indexOf("[" + column.getValue() + "]") + 2,
                                column.getValue().length()),
                        "`" + column.getValue() + "` is not a unit of " + due.words() + ", which `" + column.getKey()
                                + "` is",
                        "write one of `" + String.join("`, `", fitting) + "`");
            }
        }
        return known;
    }

    /** One row; without values when it cannot be read, so that the rows after it keep their numbers. */
    private Map<String, Stated<Quantity>> row(
            int line, String text, Map<String, String> units, Map<String, Dimension> columns) {
        String[] cells = text.split(",", -1);
        int due = before + 1;
        before = due;
        if (cells.length != units.size() + 1) {
            refuse(
                    ROW,
                    new Span(file, line, 1, text.codePointCount(0, text.length())),
                    "this row holds " + cells.length + (cells.length == 1 ? " cell" : " cells")
                            + ", and the head names " + (units.size() + 1),
                    "separate the cells by commas and the decimals by a point");
            return Map.of();
        }
        String number = cells[0].strip();
        if (!number.equals(String.valueOf(due))) {
            refuse(
                    ROW,
                    new Span(file, line, 1, cells[0].codePointCount(0, cells[0].length())),
                    "this row is numbered `" + number + "`, and " + due + " is due",
                    "list every run in the order taken; a run left out must not be hidden");
            before = number.matches("\\d{1,6}") ? Integer.parseInt(number) : due;
        }
        Map<String, Stated<Quantity>> row = new LinkedHashMap<>();
        int column = cells[0].codePointCount(0, cells[0].length()) + 2;
        int i = 1;
        for (Map.Entry<String, String> unit : units.entrySet()) {
            String cell = cells[i++];
            String reading = cell.strip();
            int indent = cell.length() - cell.stripLeading().length();
            Span where = new Span(file, line, column + indent, reading.codePointCount(0, reading.length()));
            String key = unit.getKey();
            if (reading.isEmpty()) {
                refuse(ROW, where, "`" + key + "` is empty in run " + number, "write what was read at the instrument");
            } else {
                Written<String> written =
                        new Written<>(reading + " " + unit.getValue(), where, reading + " " + unit.getValue());
                WrittenQuantity.read(written, key, Optional.ofNullable(columns.get(key)), false, findings)
                        .ifPresent(quantity -> row.put(key, quantity));
            }
            column += cell.codePointCount(0, cell.length()) + 1;
        }
        return row;
    }

    private void refuse(FindingId id, Span where, String sentence, String help) {
        findings.add(Finding.refuses(id, "", where, sentence, help));
    }
}
