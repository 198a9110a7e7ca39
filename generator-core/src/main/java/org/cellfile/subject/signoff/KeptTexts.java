package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Reading;
import org.cellfile.source.SourceFile;

/**
 * Texts of what was signed, kept so that it can be told later what changed since. Each is named by the first sixteen digits of its
 * digest.
 */
public record KeptTexts(List<Kept> texts) {

    private static final int DIGITS = 16;

    /** A text says something else than when it was kept. */
    public static final FindingId EDITED = new FindingId("sign-off.kept-edited");

    /** Nobody signed what a text holds. */
    public static final FindingId OF_NOTHING = new FindingId("sign-off.kept-of-nothing");

    /** A text is no such text. */
    public static final FindingId UNREADABLE = new FindingId("sign-off.kept-unreadable");

    /**
     * One of them.
     *
     * @param substance empty when the file holds something else
     */
    public record Kept(SourceFile file, Optional<Substance> substance) {

        /** True when the file is named as what it holds. */
        boolean asNamed() {
            return substance.filter(held -> path(held).equals(file.path())).isPresent();
        }

        /** True when it holds what was signed. */
        boolean holds(SignOff signOff) {
            return substance
                    .flatMap(held -> held.digest(signOff.covers().characters()))
                    .filter(signOff.digest().characters()::equalsIgnoreCase)
                    .isPresent();
        }
    }

    static KeptTexts of(List<SourceFile> files) {
        return new KeptTexts(files.stream()
                .filter(file -> Reading.isSignedText(file.path()))
                .map(file -> new Kept(file, Substance.parse(file.text())))
                .toList());
    }

    /** Where the text of a state is kept. */
    public static String path(Substance substance) {
        return Reading.SIGNED + digits(substance.digest()) + ".txt";
    }

    /** So many digits of a digest as tell it from others for people. */
    static String digits(String digest) {
        return digest.length() <= DIGITS ? digest : digest.substring(0, DIGITS);
    }

    /** True when the text of a state is kept. */
    boolean has(Substance state) {
        return texts.stream()
                .anyMatch(kept -> kept.asNamed() && kept.file().path().equals(path(state)));
    }

    /** The state that was signed, as it was kept. */
    Optional<Substance> signed(SignOff signOff) {
        return texts.stream().filter(kept -> kept.holds(signOff)).findFirst().flatMap(Kept::substance);
    }

    List<Finding> findings(List<SignOff> signed) {
        List<Finding> findings = new ArrayList<>();
        for (Kept kept : texts) {
            String path = "`" + kept.file().path() + "`";
            if (kept.substance().isEmpty()) {
                findings.add(
                        Finding.refuses(
                                UNREADABLE,
                                "",
                                kept.file().whole(),
                                path + " is not a text of something that was signed",
                                "fetch the file as it was from where versions are kept; a file of another sort belongs into another folder"));
            } else if (!kept.asNamed()) {
                findings.add(Finding.refuses(
                                EDITED,
                                "",
                                kept.file().whole(),
                                path + " is not what its name says it is",
                                "fetch the file as it was from where versions are kept; nobody writes into these texts by hand")
                        .because(List.of("digest of what it holds: "
                                + kept.substance().get().digest())));
            } else if (signed.stream().noneMatch(kept::holds)) {
                findings.add(Finding.warns(
                        OF_NOTHING,
                        "",
                        kept.file().whole(),
                        "nobody signed what " + path + " holds",
                        "take the file out; it tells nothing about any sign-off of this cell"));
            }
        }
        return findings;
    }
}
