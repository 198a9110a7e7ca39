package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.trace.Term;

/** EN 349:1993+A1:2008. */
@AutoService(Edition.class)
public final class En349Ed1993 implements CrushingStandard {

    private static final CrushingTable TABLE = new CrushingTable("EN 349:1993+A1:2008", "en-349-1993");

    @Override
    public String id() {
        return "EN 349:1993+A1:2008";
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
