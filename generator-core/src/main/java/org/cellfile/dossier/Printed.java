package org.cellfile.dossier;

import java.util.List;

/**
 * How a dossier was printed, embedded beside it, so that the same pages can be made from both.
 *
 * @param state {@link #DRAFT} or {@link #RELEASED}
 * @param missing what bars release, a sentence each as printed; empty in a release
 */
public record Printed(String state, List<String> missing) {

    /** Every page says that it is a draft. */
    public static final String DRAFT = "draft";

    /** Nothing barred release when release was asked for. */
    public static final String RELEASED = "released";
}
