package org.cellfile.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.dossier.Text;
import org.cellfile.subject.identity.Revision;

/**
 * A posted sheet of which somebody read the code, or the short digest, at the machine, held against what is printed now.
 *
 * @param about which sheet it is, or what was read where that cannot be told
 * @param because what was found, a line each
 */
public record ReadSheet(String about, Standing standing, List<String> because) {

    /** How a sheet stands to the description. */
    public enum Standing {
        /** it says what would be printed now, and is still valid */
        CURRENT("current"),
        /** it is a sheet of this cell that says something else, or whose day has passed */
        OUTDATED("outdated"),
        /** it was printed before its release and should hang nowhere */
        DRAFT("a draft"),
        /** it is none of the sheets of this description */
        UNKNOWN("unknown");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final String HEAD = "head (title, posting place, marks)";
    private static final String FOOT = "foot (revision, who answers for it, what to compare)";

    /**
     * Says how what was read stands to the description.
     *
     * @param read the text of the code, or the short digest as typed
     * @param now what is printed now
     * @param earlier a state it may have been printed from
     */
    public static ReadSheet of(String read, State now, Optional<State> earlier, LocalDate today) {
        Held held = new Held(now, earlier, today);
        return SheetCode.read(read)
                .map(held::code)
                .or(() -> SheetCode.typed(read).map(held::digest))
                .orElseGet(() -> new ReadSheet(
                        "`" + ComparisonText.cut(read.strip()) + "`",
                        Standing.UNKNOWN,
                        List.of(SheetCode.otherVersion(read)
                                .map(version -> "this is a code of version " + version
                                        + ", and this program reads version " + SheetCode.version()
                                        + "; exchange the sheet for one that this program printed")
                                .orElse(
                                        "this is neither the text of the code of a sheet nor a short digest of twelve hexadecimal"
                                                + " digits; read it again, the whole of it"))));
    }

    /** The answer for people. */
    public String text() {
        StringBuilder text =
                new StringBuilder(about).append(": ").append(standing.words()).append('\n');
        because.forEach(line -> text.append("  ").append(line).append('\n'));
        return text.toString();
    }

    private record Held(State now, Optional<State> earlier, LocalDate today) {

        private ReadSheet code(SheetCode code) {
            String file = code.sheet() + "-" + String.join("-", code.languages());
            String about = "`" + file + "` of `" + code.cell() + "`";
            if (!code.cell().equals(now.label().cellId())) {
                return new ReadSheet(
                        about,
                        Standing.UNKNOWN,
                        List.of("it is a sheet of another cell than the one described here, `"
                                + now.label().cellId() + "`"));
            }
            List<String> because = new ArrayList<>();
            if (code.draft()) {
                because.add("it was printed as a draft, which is not to be posted");
            }
            Optional<Sheet> printed =
                    sheets(now).filter(sheet -> sheet.file().equals(file)).findFirst();
            if (printed.isEmpty()) {
                return notPrinted(about, code, because);
            }
            Sheet sheet = printed.get();
            boolean same = SheetCode.digest(sheet, now.label()).equals(code.digest());
            if (!same) {
                differs(code, sheet, because);
            }
            List<String> validity = new ArrayList<>();
            boolean valid = valid(code.until(), sheet, validity);
            if (same || !valid) {
                because.addAll(validity);
            }
            Standing standing = code.draft() ? Standing.DRAFT : same && valid ? Standing.CURRENT : Standing.OUTDATED;
            if (standing != Standing.CURRENT) {
                hangs(sheet, because);
            }
            return new ReadSheet(about, standing, because);
        }

        private ReadSheet notPrinted(String about, SheetCode code, List<String> because) {
            List<String> languages = sheets(now)
                    .filter(sheet -> sheet.name().equals(code.sheet()))
                    .map(sheet -> String.join(" ", sheet.languages()))
                    .toList();
            because.add(
                    languages.isEmpty()
                            ? "the description has no sheet `" + code.sheet() + "`; take it down"
                            : "the sheet is not printed in these languages any more, but in `"
                                    + String.join("`, `", languages) + "`; take it down");
            return new ReadSheet(about, languages.isEmpty() ? Standing.UNKNOWN : Standing.OUTDATED, because);
        }

        private ReadSheet digest(String digest) {
            String about = "`" + SheetCode.grouped(digest) + "`";
            List<String> because = new ArrayList<>();
            Optional<Sheet> current = with(digest, now);
            if (current.isPresent()) {
                Sheet sheet = current.get();
                because.add("it is the sheet `" + sheet.file() + "` as it is printed now");
                because.add(
                        "the short digest alone does not tell a draft, nor until when the sheet is valid: look at both");
                boolean valid = valid(sheet.validUntil(), sheet, because);
                return new ReadSheet(about, valid ? Standing.CURRENT : Standing.OUTDATED, because);
            }
            Optional<Sheet> was = earlier.flatMap(state -> with(digest, state));
            if (was.isPresent()) {
                because.add("it is the sheet `" + was.get().file() + "` as printed from "
                        + earlier.orElseThrow().source());
                Optional<Sheet> is = sheets(now)
                        .filter(sheet -> sheet.file().equals(was.get().file()))
                        .findFirst();
                is.ifPresentOrElse(
                        sheet -> {
                            lineByLine(was.get(), sheet, because);
                            hangs(sheet, because);
                        },
                        () -> because.add("it is not printed any more; take it down"));
                return new ReadSheet(about, Standing.OUTDATED, because);
            }
            because.add("no sheet of this description has this short digest"
                    + earlier.map(state -> ", and none as printed from " + state.source())
                            .orElse("")
                    + "; read the whole code, or name an earlier state to look in");
            return new ReadSheet(about, Standing.UNKNOWN, because);
        }

        /** Whether a sheet that says so is still valid; what keeps it from being so is told. */
        private boolean valid(String until, Sheet sheet, List<String> because) {
            Optional<LocalDate> said = day(until);
            Optional<LocalDate> holds = day(sheet.validUntil());
            if (said.filter(today::isAfter).isPresent()) {
                because.add("it was valid until " + until + ", and today is " + today);
                return false;
            }
            if (holds.filter(day -> said.filter(one -> !one.isAfter(day)).isEmpty())
                    .isPresent()) {
                because.add("it says " + (until.isEmpty() ? "that nothing of it falls due" : "valid until " + until)
                        + ", and something it rests on falls due on " + sheet.validUntil());
                return false;
            }
            because.add(until.isEmpty() ? "nothing it rests on falls due" : "valid until " + until);
            if (!until.equals(sheet.validUntil())) {
                because.add("printed anew it would be valid "
                        + (sheet.validUntil().isEmpty() ? "without end" : "until " + sheet.validUntil()));
            }
            return true;
        }

        private static Optional<LocalDate> day(String day) {
            return day.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(day));
        }

        private void differs(SheetCode code, Sheet sheet, List<String> because) {
            because.add("it is of revision " + ComparisonText.cut(code.revision()) + ", as of " + code.asOf()
                    + "; the description is of revision " + now.label().revision() + ", as of "
                    + now.label().asOf());
            because.add(
                    SheetCode.of(sheet, now.label(), false).parts().equals(code.parts())
                            ? "each of its parts reads as it is printed now, and its short digest does not: read it again; where it"
                                    + " reads the same once more, exchange the sheet"
                            : "what differs: " + String.join("; ", parts(code, sheet)));
            revisions(code, because);
            earlier.ifPresent(state -> with(code.digest(), state)
                    .ifPresentOrElse(
                            was -> {
                                because.add("line by line, as printed from " + state.source() + ":");
                                lineByLine(was, sheet, because);
                            },
                            () -> because.add("it is not as printed from " + state.source()
                                    + " either, so that nothing can be told line by line")));
        }

        /** The parts whose digests are not those in the code. */
        private List<String> parts(SheetCode code, Sheet sheet) {
            List<String> names = Stream.of(
                            Stream.of(HEAD),
                            sheet.panels().stream().map(panel -> panel.title().get(0)),
                            Stream.of(FOOT))
                    .flatMap(part -> part)
                    .toList();
            List<String> is = SheetCode.of(sheet, now.label(), false).parts();
            List<String> gone = new ArrayList<>(code.parts());
            List<String> differ = new ArrayList<>();
            for (int i = 0; i < is.size(); i++) {
                if (!gone.remove(is.get(i))) {
                    differ.add(names.get(i));
                }
            }
            if (gone.size() > differ.size()) {
                int parts = gone.size() - differ.size();
                differ.add(parts + (parts == 1 ? " part" : " parts") + " not there any more");
            }
            return differ.isEmpty() ? List.of("the order of its parts") : differ;
        }

        private void revisions(SheetCode code, List<String> because) {
            List<Revision> all = now.cell().identity().revisions();
            Optional<LocalDate> since = all.stream()
                    .filter(one ->
                            SheetCode.onOneLine(one.revision().characters()).equals(code.revision()))
                    .flatMap(one -> one.on().value().stream())
                    .findFirst();
            all.stream()
                    .filter(one -> one.on()
                            .value()
                            .filter(day -> since.filter(day::isAfter).isPresent())
                            .isPresent())
                    .forEach(one -> because.add("revision " + one.revision().characters() + ", "
                            + one.on().characters() + ": " + one.change().characters()));
            if (since.isEmpty()) {
                because.add("revision " + ComparisonText.cut(code.revision()) + " is not in the list of revisions");
            }
        }

        private static void lineByLine(Sheet was, Sheet is, List<String> because) {
            PartOfSheet.between(was, is).forEach(part -> part.lineByLine().forEach(line -> because.add("  " + line)));
        }

        private static void hangs(Sheet sheet, List<String> because) {
            List<String> places = SheetChange.places(sheet);
            because.add(
                    places.isEmpty()
                            ? "no copy of it is recorded as hanging anywhere"
                            : "exchange it at " + Text.listed(places));
        }

        private static Optional<Sheet> with(String digest, State state) {
            return sheets(state)
                    .filter(sheet -> SheetCode.digest(sheet, state.label()).equals(digest))
                    .findFirst();
        }

        private static Stream<Sheet> sheets(State state) {
            return Composition.sheets(state.cell()).stream();
        }
    }
}
