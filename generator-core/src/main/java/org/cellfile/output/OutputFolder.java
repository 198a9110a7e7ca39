package org.cellfile.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * The folder in which each cell's set of pages has a folder of its own.
 *
 * <p>A set is written beside the earlier one and takes its place by renaming, so that a new file never lies beside old ones. A
 * run that is killed leaves the earlier set whole; if it is killed between the two renames, the next run puts it back.
 */
public final class OutputFolder {

    /** One write at a time within this process; the lock file keeps other processes out. */
    private static final Object ONE_AT_A_TIME = new Object();

    /** Its presence also tells that pages were written here before. */
    private static final String LOCK = ".cellfile.lock";

    private final Path folder;

    public OutputFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Replaces a cell's set.
     *
     * @param files the bytes of each file by its relative path
     * @return the set's folder
     * @throws IOException when the disk refuses; the earlier set is then whole
     */
    public Path replace(String cellId, SortedMap<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        synchronized (ONE_AT_A_TIME) {
            try (FileChannel channel = FileChannel.open(
                            folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock lock = channel.lock()) {
                Path set = folder.resolve(cellId);
                Path before = folder.resolve("." + cellId + ".before");
                tidy(cellId, set, before);
                Path fresh = Files.createTempDirectory(folder, "." + cellId + ".new-");
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Path path = fresh.resolve(file.getKey());
                    Files.createDirectories(path.getParent());
                    Files.write(path, file.getValue());
                }
                openToReaders(fresh);
                if (Files.exists(set)) {
                    Files.move(set, before, StandardCopyOption.ATOMIC_MOVE);
                }
                Files.move(fresh, set, StandardCopyOption.ATOMIC_MOVE);
                delete(before);
                Files.deleteIfExists(note(cellId));
                Files.deleteIfExists(note(""));
                lock.release();
                return set;
            }
        }
    }

    /** Temporary folders are made for their owner alone; a set of pages is for everybody in the plant. */
    static void openToReaders(Path fresh) throws IOException {
        if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(fresh, java.nio.file.attribute.PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    /** What a killed run left: an earlier set on its way out goes back when nothing took its place; half-written sets go. */
    private void tidy(String cellId, Path set, Path before) throws IOException {
        if (Files.exists(before)) {
            if (Files.exists(set)) {
                delete(before);
            } else {
                Files.move(before, set, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        try (DirectoryStream<Path> halves = Files.newDirectoryStream(folder, "." + cellId + ".new-*")) {
            for (Path half : halves) {
                delete(half);
            }
        }
    }

    /** Why a set could not be written, in words. */
    public static String reason(IOException failure) {
        if (failure instanceof FileAlreadyExistsException) {
            return "a file stands where a folder is due";
        }
        return failure instanceof AccessDeniedException
                ? "the account this runs under may not write there"
                : String.valueOf(failure.getMessage());
    }

    /**
     * Leaves a note beside earlier output that it is not current. Does nothing when there is none.
     *
     * @param cellId empty when the refused files do not tell it
     * @param sentence what was refused
     */
    public void notCurrent(String cellId, String sentence) throws IOException {
        boolean earlier =
                cellId.isEmpty() ? Files.exists(folder.resolve(LOCK)) : Files.isDirectory(folder.resolve(cellId));
        if (earlier) {
            Files.writeString(
                    note(cellId),
                    "The pages in this folder are not current.\n\n" + sentence
                            + "\nThey show the state before that run. Do not post or hand over copies of them.\n");
        }
    }

    private Path note(String cellId) {
        return folder.resolve(cellId.isEmpty() ? "not-current.txt" : cellId + "-not-current.txt");
    }

    static void delete(Path tree) throws IOException {
        if (!Files.exists(tree)) {
            return;
        }
        try (Stream<Path> paths = Files.walk(tree)) {
            List<Path> deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.delete(path);
            }
        }
    }
}
