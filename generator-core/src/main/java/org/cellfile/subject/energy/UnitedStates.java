package org.cellfile.subject.energy;

import org.cellfile.standard.Edition;
import org.cellfile.subject.identity.Identity;

/**
 * Whether the rules of the United States hold for a cell: when an edition of ANSI, or a part of the Code of Federal Regulations, is
 * in force for it. A page in Letter says nothing, for Letter is used elsewhere too.
 */
public final class UnitedStates {

    private UnitedStates() {}

    public static boolean holds(Identity identity) {
        return identity.standards().inForce(Edition.class).stream()
                .map(Edition::id)
                .anyMatch(id -> id.startsWith("ANSI ") || id.startsWith("29 CFR "));
    }
}
