package org.cellfile.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;

/**
 * All that a run may look at outside itself: the files of one cell's folder and the calendar.
 *
 * <p>Nothing else in the core opens a file or asks for the date, so a run can be repeated anywhere from these two.
 */
public interface World {

    /** Every file below the cell's folder, sorted by path. */
    List<Entry> entries();

    /**
     * True when what is not among the entries does not exist. False when files that a description only names, such as photographs,
     * lie elsewhere: the attachments of a PDF are such entries.
     */
    default boolean whole() {
        return true;
    }

    /** The day of the run. Used to see what has fallen due, never printed in the safety file. */
    LocalDate today();

    /**
     * One file below the cell's folder, not yet read.
     *
     * @param path relative to the folder, with forward slashes
     * @param inside false when the path is a link that leads out of the folder; such a file is never opened
     * @param size in bytes
     */
    record Entry(String path, boolean inside, long size, Content content) {

        /** The size of something that could not be looked at: opening it tells why. */
        public static final long UNREADABLE = -1;

        /** One that lies in memory. */
        public static Entry held(String path, byte[] bytes) {
            return new Entry(path, true, bytes.length, () -> new ByteArrayInputStream(bytes));
        }
    }

    /** Opens a file. */
    interface Content {
        InputStream open() throws IOException;
    }
}
