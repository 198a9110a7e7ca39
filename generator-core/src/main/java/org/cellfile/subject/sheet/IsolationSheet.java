package org.cellfile.subject.sheet;

import org.cellfile.subject.due.Due;

/** A sheet about isolating energies: it no longer holds either when the inspection of the procedure is overdue. */
interface IsolationSheet extends SheetSort {

    @Override
    default boolean restsOn(Due due, PostedCell cell) {
        return cell.ofTheMachine(due) || cell.ofTheIsolation(due);
    }
}
