package org.cellfile.dossier;

/** Which version of this program wrote a dossier: another one may know other rules. */
public final class MadeBy {

    private static final String VERSION = Words.structure("made-by", "version").get("version");

    private MadeBy() {}

    /** For example {@code 1.4.0}. */
    public static String version() {
        return VERSION;
    }
}
