package org.cellfile.read;

import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Recorded;

/** Reads what somebody recorded under {@code stated}. */
public final class Recordings {

    private Recordings() {}

    /** The recorded values of one thing; none when the section has no {@code stated}. */
    public static Recorded read(Section section, String about) {
        Optional<Section> stated = section.sectionIfStated("stated");
        return new Recorded(
                about,
                stated.map(Section::where).orElse(section.where()),
                stated.map(Section::quantities).orElseGet(Map::of));
    }
}
