package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Redaction;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/**
 * What a copy of the file that leaves the plant holds.
 *
 * @param hold {@code everything} (the default) or {@code no-internal-parts}
 * @param internal paths of what the plant takes for internal beside {@link InternalPart#ALWAYS}
 * @param leftOut the chapters of which something was left out, where this description is itself such a copy
 * @param where the place at which it says so
 */
public record Copies(Stated<String> hold, List<Stated<String>> internal, List<Carried> leftOut, Span where) {

    /** A chapter of which something was left out, with the digest it has in the full description. */
    public record Carried(Stated<String> chapter, Stated<String> digest) {}

    /** Nothing is left out. */
    public static final String EVERYTHING = "everything";

    /** Key holders, places of spare actuators and what is told of persons are left out. */
    public static final String NO_INTERNAL_PARTS = "no-internal-parts";

    /** What is said of a copy contradicts itself. */
    static final FindingId CONTRADICTED = new FindingId("copies.contradicted");

    /** What is written as the digest of a chapter is none. */
    static final FindingId NO_DIGEST = new FindingId("copies.no-digest");

    /**
     * Reads what a copy holds, and of what this one was made.
     *
     * @param chapters that can be signed
     */
    public static Copies read(Section top, Set<String> chapters) {
        Optional<Section> section = top.sectionIfStated("copies");
        Stated<String> hold = section.map(one -> one.word("hold", Set.of(EVERYTHING, NO_INTERNAL_PARTS)))
                .orElseGet(() -> new Stated.Missing<>(top.where(), "hold"));
        List<Stated<String>> internal =
                section.map(one -> one.textsIfStated("internal")).orElse(List.of());
        section.ifPresent(Section::close);
        List<Carried> carried = new ArrayList<>();
        for (Section one : top.has(Redaction.KEY) ? top.list(Redaction.KEY) : List.<Section>of()) {
            Carried chapter = new Carried(one.word("chapter", chapters), digest(one));
            one.close();
            if (chapter.chapter().value().isPresent()) {
                carried.add(chapter);
            }
        }
        Copies copies = new Copies(hold, internal, carried, top.where(Redaction.KEY));
        boolean unread = section.isPresent() && hold.value().isEmpty(); // and that was said
        if (!unread) {
            copies.contradictions(top.has(Redaction.KEY)).forEach(top::report);
        }
        return copies;
    }

    private static Stated<String> digest(Section section) {
        Stated<String> digest = section.text("digest");
        if (digest.value().isPresent() && !digest.characters().matches("[0-9a-f]{64}")) {
            section.report(Finding.refuses(
                    NO_DIGEST,
                    "",
                    digest.where(),
                    "`" + digest.characters() + "` is not the digest of a chapter",
                    "take this copy from the safety file again; a digest is 64 digits, 0 to 9 and a to f"));
        }
        return digest;
    }

    private List<Finding> contradictions(boolean copy) {
        List<Finding> findings = new ArrayList<>();
        if (copy && !withoutInternalParts()) {
            findings.add(contradicted(
                    where,
                    "`" + Redaction.KEY
                            + "` says that this is a copy from which parts were left out, and nothing under `copies`"
                            + " says that copies hold no internal parts",
                    "take out `" + Redaction.KEY + "`, which the program writes into a copy and nobody by hand"));
        }
        if (!internal.isEmpty() && hold.value().filter(EVERYTHING::equals).isPresent()) {
            findings.add(contradicted(
                    internal.get(0).where(),
                    "parts are named that are internal, and a copy holds `" + EVERYTHING + "`",
                    "write `hold: " + NO_INTERNAL_PARTS + "` if they are to be left out of copies, or name none"));
        }
        Set<String> chapters = new HashSet<>();
        for (Carried one : leftOut) {
            if (!chapters.add(one.chapter().characters())) {
                findings.add(contradicted(
                        one.chapter().where(),
                        "the digest of the chapter `" + one.chapter().characters() + "` stands here a second time",
                        "take this copy from the safety file again; nobody writes this list by hand"));
            }
        }
        return findings;
    }

    private static Finding contradicted(Span where, String sentence, String help) {
        return Finding.refuses(CONTRADICTED, "", where, sentence, help);
    }

    /** True when internal parts are left out. */
    public boolean withoutInternalParts() {
        return hold.value().filter(NO_INTERNAL_PARTS::equals).isPresent();
    }

    /** True when this description is a copy from which something was left out. */
    public boolean isCopy() {
        return !leftOut.isEmpty();
    }

    /** Digests of the chapters of which something was left out, by chapter. */
    public Map<String, String> carried() {
        Map<String, String> carried = new LinkedHashMap<>();
        leftOut.forEach(
                one -> carried.put(one.chapter().characters(), one.digest().characters()));
        return carried;
    }
}
