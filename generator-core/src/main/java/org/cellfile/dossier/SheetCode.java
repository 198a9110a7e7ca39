package org.cellfile.dossier;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What stands in the code of a posted sheet, so that from the sheet alone, read at the machine, can be told which it is, and which of
 * its parts say something else today.
 *
 * <p>The digests are of what the sheet says. As in what is signed, days and the draft mark do not count: a test that was done again
 * moves the day until which a sheet is valid, and changes none of its words.
 *
 * @param cell its short name
 * @param sheet which print of which sheet
 * @param languages their tags, in the order in which they stand on it
 * @param revision of the description it was printed from, of a long one the beginning
 * @param asOf the day that description speaks of, as in 2026-03-31
 * @param until the last day on which it is valid; empty when nothing falls due
 * @param draft true when it was not released
 * @param digest twelve hexadecimal digits of the SHA-256 of all it says
 * @param parts four such digits for each part: the head with the name of the cell, each panel, the foot
 */
public record SheetCode(
        String cell,
        String sheet,
        List<String> languages,
        String revision,
        String asOf,
        String until,
        boolean draft,
        String digest,
        List<String> parts) {

    private static final String NAME = "cellfile sheet ";
    private static final String VERSION = "1";
    private static final String BEGINNING = NAME + VERSION;
    private static final String NONE = "none";
    private static final String DRAFT = "draft";
    private static final String RELEASED = "released";
    private static final String DAY = "\\d{4}-\\d{2}-\\d{2}";

    private static final int OF_ALL = 12;
    private static final int OF_A_PART = 4;

    /** More of a revision does not stand in it, so that the code stays coarse enough for any camera. */
    private static final int LONGEST_REVISION = 40;

    /** No code holds more characters. */
    private static final int LONGEST = 2000;

    /** Whoever types it, or a reader with its shift key down, may write it in capitals: nothing in it rests on them. */
    private static final Pattern TEXT = Pattern.compile(
            BEGINNING
                    + "; ([a-z0-9-]+); ([a-z0-9-]+); ([a-z0-9-]+(?: [a-z0-9-]+)*); revision (.*); as of (" + DAY
                    + "); until (" + DAY + "|" + NONE + "); (" + DRAFT + "|" + RELEASED
                    + "); ([0-9a-f]{12}); ([0-9a-f]{4}(?: [0-9a-f]{4})*)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OTHER_VERSION =
            Pattern.compile(NAME + "(?!" + VERSION + ";)(\\d{1,9});.*", Pattern.CASE_INSENSITIVE);

    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{4}([ -]?)[0-9a-f]{4}\\1[0-9a-f]{4}");

    /** Also those that do not let a line end, with which digests are printed. */
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");

    /** That of a sheet as it is printed. */
    public static SheetCode of(Sheet sheet, Label label, boolean draft) {
        List<Object> said = said(sheet, label);
        return new SheetCode(
                label.cellId(),
                sheet.name(),
                sheet.languages(),
                onOneLine(label.revision()),
                label.asOf(),
                sheet.validUntil(),
                draft,
                digest(sheet, label),
                said.stream().map(part -> digest(part, OF_A_PART)).toList());
    }

    /** The short digest of all that a sheet says. */
    public static String digest(Sheet sheet, Label label) {
        return digest(said(sheet, label), OF_ALL);
    }

    /** The head, each panel, the foot. */
    private static List<Object> said(Sheet sheet, Label label) {
        List<Object> said = new ArrayList<>();
        said.add(List.of(
                label.cellId(),
                label.cellName(),
                sheet.name(),
                sheet.languages(),
                sheet.title(),
                sheet.places(),
                sheet.marks()));
        said.addAll(sheet.panels());
        said.add(List.of(sheet.foot(), sheet.displays()));
        return said;
    }

    private static String digest(Object said, int digits) {
        return Digest.sha256(Canonical.write(said)).substring(0, digits);
    }

    /** A revision as it stands in a code. */
    public static String onOneLine(String revision) {
        String line = withSingleBlanks(revision);
        return line.codePointCount(0, line.length()) <= LONGEST_REVISION
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST_REVISION))
                        .strip();
    }

    /** The line that is printed as the code. */
    public String text() {
        return String.join(
                "; ",
                BEGINNING,
                cell,
                sheet,
                String.join(" ", languages),
                "revision " + revision,
                "as of " + asOf,
                "until " + (until.isEmpty() ? NONE : until),
                draft ? DRAFT : RELEASED,
                digest,
                String.join(" ", parts));
    }

    /** What such a line says; empty for any other text. */
    public static Optional<SheetCode> read(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher matcher = TEXT.matcher(withSingleBlanks(text));
        return matcher.matches() && isDay(matcher.group(5)) && isDay(matcher.group(6))
                ? Optional.of(new SheetCode(
                        small(matcher.group(1)),
                        small(matcher.group(2)),
                        Stream.of(matcher.group(3).split(" ", -1))
                                .map(tag -> Locale.forLanguageTag(tag).toLanguageTag())
                                .toList(),
                        matcher.group(4),
                        matcher.group(5),
                        small(matcher.group(6)).equals(NONE) ? "" : matcher.group(6),
                        small(matcher.group(7)).equals(DRAFT),
                        small(matcher.group(8)),
                        List.of(small(matcher.group(9)).split(" ", -1))))
                : Optional.empty();
    }

    private static boolean isDay(String written) {
        try {
            return small(written).equals(NONE) || LocalDate.parse(written).getYear() > 0;
        } catch (DateTimeException noSuchDay) {
            return false;
        }
    }

    /** A short digest that somebody typed, in groups or without; empty for any other text. */
    public static Optional<String> typed(String text) {
        String lower = small(withSingleBlanks(text));
        return DIGEST.matcher(lower).matches() ? Optional.of(lower.replaceAll("[ -]", "")) : Optional.empty();
    }

    /** The version of a code that is of another one than this program writes and reads. */
    public static Optional<String> otherVersion(String text) {
        Matcher matcher = OTHER_VERSION.matcher(withSingleBlanks(text));
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    /** The version of the codes this program writes and reads. */
    public static String version() {
        return VERSION;
    }

    private static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private static String withSingleBlanks(String text) {
        return BLANKS.matcher(text).replaceAll(" ").strip();
    }

    /** A short digest as it is printed for people: in groups of four. */
    public static String grouped(String digest) {
        return digest.replaceAll("(....)(?=.)", "$1 ");
    }
}
