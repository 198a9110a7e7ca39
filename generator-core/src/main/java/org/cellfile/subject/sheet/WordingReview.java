package org.cellfile.subject.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.InLanguages.Review;

/**
 * Whether somebody whose language it is has read the wording in it as it is now.
 *
 * @param now what there is to read
 * @param stated the plant's reviews of the language, in the order written
 */
public record WordingReview(Language language, SeenWording now, List<Review> stated) {

    /** Nobody whose language it is reviewed its wording. */
    static final FindingId NOT_REVIEWED = new FindingId("language.not-reviewed");

    /** The wording is another one than that which was reviewed. */
    static final FindingId LAPSED = new FindingId("language.review-lapsed");

    static WordingReview of(Language language, Sheets sheets) {
        return new WordingReview(
                language,
                // what the description says in its own language is signed with it
                SeenWording.of(
                        language, language.tag().equals(sheets.ownLanguage()) ? List.of() : sheets.translations()),
                sheets.inLanguages().reviews(language.tag()));
    }

    /** True when somebody is named who saw these very words. */
    boolean counts() {
        return byProgram() || counting().isPresent();
    }

    /** Its fixed wording was reviewed for this program, and the cell says nothing else in it. */
    boolean byProgram() {
        return !language.reviewedBy().isBlank() && now.own().isEmpty();
    }

    /** The latest of the plant's that counts. */
    Optional<Review> counting() {
        return latest(review -> review.wording().characters().equals(now.digest()));
    }

    /** The latest of the plant's, whatever it is worth. */
    Optional<Review> latest() {
        return latest(review -> true);
    }

    private Optional<Review> latest(Predicate<Review> which) {
        return stated.stream()
                .filter(Review::readable)
                .filter(which)
                .max(Comparator.comparing(review -> review.on().value().orElseThrow()));
    }

    /** Reports that none counts. */
    void report(Stated<String> printed, Findings findings) {
        // What a review lacks by which it could be read is told there.
        if (counts() || !stated.stream().allMatch(Review::readable)) {
            return;
        }
        String tag = language.tag();
        String due =
                "and state under `sheets`, `reviewed` who that was, on which day, and `wording: " + now.digest() + "`";
        Optional<Review> latest = latest();
        if (latest.isEmpty()) {
            findings.add(Finding.barsRelease(
                    NOT_REVIEWED,
                    "",
                    printed.where(),
                    "nobody whose language it is has reviewed the wording in `" + tag + "`",
                    "have the printed sheets read by somebody who knows the machine and grew up with the language, "
                            + due));
        } else if (latest.get().wording().value().isEmpty()) {
            findings.add(Finding.barsRelease(
                    NOT_REVIEWED,
                    "",
                    latest.get().language().where(),
                    "this review does not say which wording in `" + tag + "` was read, and cannot count",
                    "have the printed sheets read as they are now by somebody who grew up with the language, " + due));
        } else {
            Stated<String> wording = latest.get().wording();
            findings.add(Finding.barsRelease(
                            LAPSED,
                            "",
                            wording.where(),
                            "the review of `" + tag + "` saw the wording `" + wording.characters()
                                    + "`, and it is another one now",
                            "have what changed read by somebody who grew up with the language, " + due)
                    .because(List.of(
                            "what changed since: " + String.join(", and ", now.changedSince(wording.characters())))));
        }
    }
}
