package org.cellfile.output;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** A folder that is made with everything in it, or not at all. */
public final class NewFolder {

    private NewFolder() {}

    /** Why nothing can be written there; empty when it does not exist or holds nothing. */
    public static Optional<String> occupied(Path folder) {
        if (!Files.exists(folder, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (!Files.isDirectory(folder, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(folder + " is not a folder");
        }
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
            return inside.iterator().hasNext()
                    ? Optional.of("the folder " + folder + " is not empty, and nothing in it is written over")
                    : Optional.empty();
        } catch (IOException failed) {
            return Optional.of("the folder " + folder + " cannot be looked into (" + OutputFolder.reason(failed) + ")");
        }
    }

    /**
     * Writes beside the folder first and renames then.
     *
     * @param files the bytes of each file by its path below the folder, with forward slashes
     * @throws IOException when the disk refuses, or a path leads out of the folder
     */
    public static void write(Path folder, SortedMap<String, byte[]> files) throws IOException {
        Path whole = folder.toAbsolutePath().normalize();
        Path around = whole.getParent();
        if (around == null) {
            throw new IOException("a folder must have one around it");
        }
        Files.createDirectories(around);
        Path fresh = Files.createTempDirectory(around, ".cellfile-");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = fresh.resolve(file.getKey()).normalize();
                if (!path.startsWith(fresh) || path.equals(fresh)) {
                    throw new IOException("`" + file.getKey() + "` leads out of the folder");
                }
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            }
            OutputFolder.openToReaders(fresh);
            Files.deleteIfExists(whole);
            Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            OutputFolder.delete(fresh);
        }
    }
}
