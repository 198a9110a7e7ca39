package org.cellfile.audit;

import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.SourceFile;

/** A file is not looked at any further. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Finding finding;

    Refusal(Finding finding) {
        this.finding = finding;
    }

    static Refusal of(FindingId id, String file, String sentence, String help) {
        return new Refusal(finding(id, file, sentence, help));
    }

    /** A finding about the file as a whole. */
    static Finding finding(FindingId id, String file, String sentence, String help) {
        return Finding.refuses(id, "", SourceFile.unread(file).whole(), sentence, help);
    }

    /** Why. */
    public Finding finding() {
        return finding;
    }
}
