package org.cellfile.subject.register;

import java.util.List;
import org.cellfile.read.Section;

/**
 * The registers of the cell.
 *
 * @param changes in the order written
 * @param bypasses open ones and ended ones
 */
public record Registers(List<Change> changes, List<Bypass> bypasses) {

    public static Registers read(Section top) {
        return new Registers(
                Section.each(top.listIfStated("changes"), Change::read),
                Section.each(top.listIfStated("bypasses"), Bypass::read));
    }
}
