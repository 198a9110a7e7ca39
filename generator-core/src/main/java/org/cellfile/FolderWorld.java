package org.cellfile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.cellfile.source.World;

/**
 * A cell's folder on disk, and the calendar of this machine. Links are not followed out of the folder, and folders that are
 * links are not entered.
 */
public final class FolderWorld implements World {

    /** A cell's files lie flat or one folder down; what lies deeper is not a cell's. */
    private static final int DEEPEST = 6;

    private final Path folder;
    private final Clock clock;

    public FolderWorld(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** A folder with this machine's calendar: what is due is due by the day people here write. */
    @SuppressWarnings("JavaTimeDefaultTimeZone")
    public static FolderWorld of(Path folder) {
        return new FolderWorld(folder, Clock.systemDefaultZone());
    }

    @Override
    public List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        try {
            Path real = folder.toRealPath();
            Files.walkFileTree(real, Set.of(), DEEPEST, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) throws IOException {
                    if (!hidden(real, path) && !attributes.isDirectory()) {
                        entries.add(entry(path, real));
                    }
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path path, IOException failure) {
                    entries.add(new Entry(relative(real, path), true, Entry.UNREADABLE, () -> {
                        throw failure;
                    }));
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        entries.sort(Comparator.comparing(Entry::path));
        return List.copyOf(entries);
    }

    private static String relative(Path real, Path path) {
        return real.relativize(path).toString().replace('\\', '/');
    }

    private static boolean hidden(Path real, Path path) {
        for (Path part : real.relativize(path)) {
            if (part.toString().startsWith(".")) {
                return true;
            }
        }
        return false;
    }

    private static Entry entry(Path path, Path real) throws IOException {
        boolean inside = true;
        if (Files.isSymbolicLink(path)) {
            inside = Files.exists(path) && path.toRealPath().startsWith(real);
        }
        boolean file = inside && Files.isRegularFile(path);
        return new Entry(relative(real, path), inside, file ? Files.size(path) : 0, () -> {
            if (!file) {
                throw new IOException("it is not a file"); // a pipe would be waited for without end
            }
            return Files.newInputStream(path);
        });
    }

    @Override
    public LocalDate today() {
        return LocalDate.now(clock);
    }
}
