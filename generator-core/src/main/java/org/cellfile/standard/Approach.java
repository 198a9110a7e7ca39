package org.cellfile.standard;

import org.cellfile.trace.Term;

/**
 * Somebody approaches a hazard past a safeguard: all that does not depend on the kind of the safeguard.
 *
 * @param tag of the safeguard, or of its recomputation under one of several editions
 * @param zoneLowest lowest point of the hazard zones it protects, above the floor, in mm
 * @param zoneHighest their highest point, in mm
 * @param installed distance that counts: the measured one less its uncertainty, in mm
 */
public record Approach(String tag, Timing timing, Term zoneLowest, Term zoneHighest, Term installed) {

    /** Tag of the safeguard itself: no tag holds a point, and a recomputation puts the edition behind one. */
    String safeguard() {
        int point = tag.indexOf('.');
        return point < 0 ? tag : tag.substring(0, point);
    }
}
