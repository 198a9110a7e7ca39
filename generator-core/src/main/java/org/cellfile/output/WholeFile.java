package org.cellfile.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A single file that is written whole or not at all: a run that is killed leaves the earlier one as it was. */
public final class WholeFile {

    /** One write at a time within this process; another process writes under a name of its own. */
    private static final Object ONE_AT_A_TIME = new Object();

    private WholeFile() {}

    /**
     * Puts a file in the place of an earlier one, if there is one.
     *
     * @throws IOException when the disk refuses; an earlier file is then as it was
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        // The folder of a cell is read without files whose names begin with a dot.
        Path fresh = file.resolveSibling(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        synchronized (ONE_AT_A_TIME) {
            try {
                Files.write(fresh, bytes);
                Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(fresh);
            }
        }
    }
}
