package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.trace.Term;

/** ISO 13854:2017. */
@AutoService(Edition.class)
public final class Iso13854Ed2017 implements CrushingStandard {

    private static final CrushingTable TABLE = new CrushingTable("ISO 13854:2017", "iso-13854-2017");

    @Override
    public String id() {
        return "ISO 13854:2017";
    }

    @Override
    public String title() {
        return "Minimum gaps to avoid crushing of parts of the human body";
    }

    @Override
    public Term leastGap(String part) {
        return TABLE.leastGap(part);
    }
}
