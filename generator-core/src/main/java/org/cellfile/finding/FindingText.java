package org.cellfile.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;

/** Findings as text for people: a line that editors can jump from, the place, the reasons, and what to do. */
public final class FindingText {

    /** How much of a long line is shown on either side of the place. */
    private static final int AROUND = 60;

    /** How many characters are marked at most. */
    private static final int LONGEST = 200;

    private FindingText() {}

    /** One finding. */
    public static List<String> lines(Finding finding) {
        return lines(finding, finding.where().file().lines());
    }

    private static List<String> lines(Finding finding, List<String> source) {
        Span where = finding.where();
        List<String> lines = new ArrayList<>();
        lines.add(where.position() + ": " + finding.severity().word() + ": " + finding.sentence() + " [" + finding.id()
                + "]");
        String gutter = " ".repeat(String.valueOf(where.line()).length());
        if (where.length() > 0 && where.line() <= source.size()) {
            excerpt(source.get(where.line() - 1), where, gutter, lines);
        }
        String mark = "= ";
        for (String reason : finding.because()) {
            lines.add((gutter + " " + mark + reason).stripTrailing());
            mark = "  ";
        }
        if (!finding.help().isEmpty()) {
            lines.add(gutter + " help: " + finding.help());
        }
        return lines;
    }

    private static void excerpt(String source, Span where, String gutter, List<String> lines) {
        int[] points = source.codePoints().toArray();
        int start = Math.min(where.column() - 1, points.length);
        int end = Math.min(points.length, start + Math.min(where.length(), LONGEST));
        int from = start > AROUND * 2 ? start - AROUND : 0;
        int to = Math.min(points.length, Math.max(end, start + 1) + AROUND);
        String before = from > 0 ? "… " : "";
        String after = to < points.length ? " …" : "";
        String shown = new String(points, from, to - from).replaceAll("[\\p{Cc}\\p{Cf}]", "·");
        lines.add(gutter + " |");
        lines.add(where.line() + " | " + before + shown + after);
        lines.add(gutter + " | " + " ".repeat(before.length() + start - from)
                + "^".repeat(Math.max(1, Math.min(end, to) - start)));
    }

    /** All findings, a blank line between them, and how many there are of each severity. */
    public static String of(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        Map<SourceFile, List<String>> sources = new HashMap<>();
        for (Finding finding : findings) {
            List<String> source = sources.computeIfAbsent(finding.where().file(), SourceFile::lines);
            lines(finding, source).forEach(line -> text.append(line).append('\n'));
            text.append('\n');
        }
        return text.toString();
    }

    /** For example {@code 2 errors, 1 warning}. */
    public static String count(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        count(findings, Severity.REFUSES, "error", "errors", counts);
        count(findings, Severity.BARS_RELEASE, "bar to release", "bars to release", counts);
        count(findings, Severity.WARNS, "warning", "warnings", counts);
        return counts.isEmpty() ? "nothing found" : String.join(", ", counts);
    }

    private static void count(List<Finding> findings, Severity severity, String one, String many, List<String> into) {
        long count = findings.stream()
                .filter(finding -> finding.severity() == severity)
                .count();
        if (count > 0) {
            into.add(count + " " + (count == 1 ? one : many));
        }
    }
}
