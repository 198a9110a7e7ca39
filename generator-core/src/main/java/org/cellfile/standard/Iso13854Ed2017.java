package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.List;
import org.cellfile.trace.Term;

/** ISO 13854:2017. */
@AutoService(Edition.class)
public final class Iso13854Ed2017 implements CrushingStandard {

    private static final String ID = "ISO 13854:2017";

    private final CrushingTable table;

    /** As its values are held here. */
    public Iso13854Ed2017() {
        this(CopyValues.NONE);
    }

    private Iso13854Ed2017(CopyValues copy) {
        table = new CrushingTable(ID, "iso-13854-2017", copy);
    }

    @Override
    public Iso13854Ed2017 reading(CopyValues copy) {
        return new Iso13854Ed2017(copy);
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
