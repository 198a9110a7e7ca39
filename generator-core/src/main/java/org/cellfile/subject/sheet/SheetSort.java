package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.mode.Mode;

/** One sort of posted sheet. Each is a file of its own, found by itself. */
public interface SheetSort {

    /** As written under {@code sheet}; also the beginning of the keys of its wording and of its file's name. */
    String id();

    /**
     * The sort of mode the cell is in while somebody does what the sheet says; nothing on it may go beyond that mode. Empty where no
     * mode counts, because the cell was stopped in an emergency or its energies are isolated.
     */
    default Optional<String> mode() {
        return Optional.of(Mode.AUTOMATIC);
    }

    /** False when it has nothing to tell of this cell; it is not printed then. */
    default boolean tells(PostedCell cell) {
        return true;
    }

    /**
     * Its parts in reading order, told in one language. In every language there are the same parts with the same lines.
     *
     * @param cell what the sheet may tell of
     */
    List<Part> parts(PostedCell cell, Wording wording);

    /** True when it no longer holds after that day: when what falls due is about the machine, not about people, instruments or papers. */
    default boolean restsOn(Due due, PostedCell cell) {
        return cell.ofTheMachine(due);
    }
}
