package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.List;
import org.cellfile.trace.Term;

/** EN 349:1993+A1:2008. */
@AutoService(Edition.class)
public final class En349Ed1993 implements CrushingStandard {

    private static final String ID = "EN 349:1993+A1:2008";

    private final CrushingTable table;

    /** As its values are held here. */
    public En349Ed1993() {
        this(CopyValues.NONE);
    }

    private En349Ed1993(CopyValues copy) {
        table = new CrushingTable(ID, "en-349-1993", copy);
    }

    @Override
    public En349Ed1993 reading(CopyValues copy) {
        return new En349Ed1993(copy);
    }

    @Override
    public List<Asked> asked() {
        return table.asked();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Minimum gaps to avoid crushing of parts of the human body";
    }

    @Override
    public Term leastGap(String part) {
        return table.leastGap(part);
    }
}
