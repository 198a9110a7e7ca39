package org.cellfile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.SignOffs;

/**
 * The file of a cell in which its sign-offs stand, as it is and with one more at its end. Nothing that stands in it is touched.
 *
 * @param path from the cell's folder
 * @param before its bytes in ISO 8859-1, one character each; empty when there is no such file yet
 * @param added what comes after them
 * @param line on which the added sign-off begins
 */
record SignOffFile(String path, String before, String added, int line) {

    private static final String BY_CUSTOM = "sign-offs.yaml";

    /**
     * With one more.
     *
     * @param entry the keys of the sign-off and what stands under them
     */
    static SignOffFile with(Cell cell, Path folder, Map<String, String> entry) throws IOException {
        String path = cell.signOffs().where().map(where -> where.file().path()).orElse(BY_CUSTOM);
        Path file = folder.resolve(path);
        String before = Files.exists(file) ? new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1) : "";
        String end = before.contains("\r\n") ? "\r\n" : "\n";
        StringBuilder added = new StringBuilder();
        if (before.isEmpty()) {
            added.append("cellfile: 1").append(end);
        } else if (!before.endsWith("\n")) {
            added.append(end);
        }
        if (cell.signOffs().where().isEmpty()) {
            added.append(end).append(SignOffs.KEY).append(':').append(end);
        }
        int line = (int) (before + added)
                        .chars()
                        .filter(character -> character == '\n')
                        .count()
                + 1;
        String indent = indent(cell);
        String mark = indent + "- ";
        for (Map.Entry<String, String> pair : entry.entrySet()) {
            added.append(mark)
                    .append(pair.getKey())
                    .append(": ")
                    .append(written(pair.getValue()))
                    .append(end);
            mark = indent + "  ";
        }
        return new SignOffFile(path, before, added.toString(), line);
    }

    /** As far in as the sign-offs before it. */
    private static String indent(Cell cell) {
        return cell.signOffs().signed().stream()
                .findFirst()
                .map(first -> first.where().file().lines().get(first.where().line() - 1))
                .filter(line -> line.strip().startsWith("-"))
                .map(line -> line.substring(0, line.indexOf('-')))
                .orElse("  ");
    }

    /** Plain where nothing in it could mean something to YAML, else between quotation marks. */
    private static String written(String value) {
        if (value.matches("[A-Za-z0-9][A-Za-z0-9 +/=-]*") && !value.endsWith(" ")) {
            return value;
        }
        return value.codePoints()
                .mapToObj(point -> point == '"' || point == '\\'
                        ? "\\" + Character.toString(point)
                        : point < ' '
                                ? "\\x" + Integer.toHexString(0x100 | point).substring(1)
                                : Character.toString(point))
                .collect(Collectors.joining("", "\"", "\""));
    }

    /** The cell as it would be with the file in it. */
    World in(World world) {
        byte[] bytes = bytes();
        List<World.Entry> entries = new ArrayList<>(world.entries());
        entries.removeIf(entry -> entry.path().equals(path));
        entries.add(World.Entry.held(path, bytes));
        entries.sort(Comparator.comparing(World.Entry::path));
        List<World.Entry> all = List.copyOf(entries);
        return new World() {
            @Override
            public List<Entry> entries() {
                return all;
            }

            @Override
            public LocalDate today() {
                return world.today();
            }
        };
    }

    /** The added part is in UTF-8 as all that is read. */
    private byte[] bytes() {
        byte[] first = before.getBytes(StandardCharsets.ISO_8859_1);
        byte[] then = added.getBytes(StandardCharsets.UTF_8);
        byte[] all = Arrays.copyOf(first, first.length + then.length);
        System.arraycopy(then, 0, all, first.length, then.length);
        return all;
    }

    /** True when a place lies in what was added. */
    boolean holds(SourceFile file, int place) {
        return file.path().equals(path) && place >= line;
    }

    /** Puts the file in place of the earlier one, whole or not at all. */
    Path write(Path folder) throws IOException {
        Path file = folder.resolve(path);
        if (Files.exists(file)) {
            file = file.toRealPath();
            if (!before.equals(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))) {
                throw new IOException("somebody else changed the file meanwhile");
            }
        }
        replace(file, bytes());
        return folder.resolve(path);
    }

    /** Writes beside a file, then moves it there. */
    static void replace(Path file, byte[] bytes) throws IOException {
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new"); // hidden files are not read as a cell's
        try {
            Files.write(fresh, bytes);
            if (Files.exists(file) && Files.getFileStore(file).supportsFileAttributeView("posix")) {
                Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(file));
            }
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
