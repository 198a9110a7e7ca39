package org.cellfile;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.source.World;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.eclipse.jgit.util.SystemReader;

/**
 * A cell's folder as it was in a revision of the Git repository it lies in. The repository is only read, no other program is
 * started, and a revision is a name that is looked up, never an option of anything.
 */
public final class GitWorld implements World {

    /** As in {@link FolderWorld}. */
    private static final int DEEPEST = 6;

    /** More of one file is not held in memory; evidence is not larger either. */
    private static final int LARGEST = 64 << 20;

    /** Digits of a commit that tell it from others for people. */
    private static final int SHORT = 10;

    static {
        SystemReader.setInstance(new NoSettings(SystemReader.getInstance()));
    }

    private final List<Entry> entries;
    private final String commit;
    private final LocalDate today;

    private GitWorld(List<Entry> entries, String commit, LocalDate today) {
        this.entries = entries;
        this.commit = commit;
        this.today = today;
    }

    /**
     * The folder in that revision, read at once.
     *
     * @param revision a tag, a branch or a commit
     */
    public static GitWorld of(Path folder, String revision) throws NoSuchState {
        // What stands behind `@{` is the log of this copy of the repository, which nobody else has.
        if (!revision.matches("[^-\\s\\p{Cc}][^\\s\\p{Cc}]*") || revision.contains("@{")) {
            throw new NoSuchState("`" + revision + "` names no revision; write a tag, a branch or a commit");
        }
        try {
            Path real = folder.toRealPath();
            FileRepositoryBuilder found = new FileRepositoryBuilder().findGitDir(real.toFile());
            if (found.getGitDir() == null) {
                throw new NoSuchState("the folder " + folder + " lies in no Git repository");
            }
            try (Repository repository = found.setMustExist(true).build()) {
                return of(folder, real, repository, revision);
            }
        } catch (IOException | IllegalArgumentException failed) {
            throw new NoSuchState(
                    "the Git repository of the folder " + folder + " cannot be read: " + failed.getMessage());
        }
    }

    private static GitWorld of(Path folder, Path real, Repository repository, String revision)
            throws IOException, NoSuchState {
        if (repository.isBare()) {
            throw new NoSuchState("the Git repository of the folder " + folder + " has no working tree");
        }
        Path root = repository.getWorkTree().toPath().toRealPath();
        String within = root.relativize(real).toString().replace('\\', '/');
        try (RevWalk walk = new RevWalk(repository)) {
            RevCommit commit = commit(repository, walk, revision);
            List<Entry> entries = entries(repository, commit, within);
            if (entries.isEmpty()) {
                throw new NoSuchState("the revision `" + revision + "` holds no folder "
                        + (within.isEmpty() ? "with files" : within));
            }
            return new GitWorld(entries, commit.name(), FolderWorld.of(folder).today());
        }
    }

    private static RevCommit commit(Repository repository, RevWalk walk, String revision)
            throws IOException, NoSuchState {
        ObjectId id;
        try {
            Optional<Ref> tag = Optional.ofNullable(repository.exactRef(Constants.R_TAGS + revision));
            Optional<Ref> branch = Optional.ofNullable(repository.exactRef(Constants.R_HEADS + revision));
            id = repository.resolve(revision);
            if (id != null
                    && tag.isPresent()
                    && branch.isPresent()
                    && !walk.parseCommit(tag.get().getObjectId())
                            .equals(walk.parseCommit(branch.get().getObjectId()))) {
                throw ambiguous(
                        revision,
                        "is a tag and a branch, which lead to two commits; write " + Constants.R_TAGS + revision
                                + " or " + Constants.R_HEADS + revision);
            }
        } catch (AmbiguousObjectException several) {
            throw ambiguous(
                    revision,
                    "begins " + several.getCandidates().size() + " commits or other objects; write more of its digits");
        } catch (RevisionSyntaxException notUnderstood) {
            id = null;
        }
        if (id == null) {
            throw new NoSuchState("there is no revision `" + revision + "` in the Git repository of this folder");
        }
        try {
            return walk.parseCommit(id);
        } catch (IncorrectObjectTypeException other) {
            throw new NoSuchState("`" + revision + "` names something in the Git repository that is no commit");
        } catch (MissingObjectException gone) {
            throw new NoSuchState("the commit `" + revision + "` is not in the Git repository of this folder");
        }
    }

    private static NoSuchState ambiguous(String revision, String why) {
        return new NoSuchState("`" + revision + "` can mean more than one revision: it " + why);
    }

    private static List<Entry> entries(Repository repository, RevCommit commit, String within) throws IOException {
        List<Entry> entries = new ArrayList<>();
        try (TreeWalk tree = new TreeWalk(repository)) {
            tree.addTree(commit.getTree());
            tree.setRecursive(true);
            if (!within.isEmpty()) {
                tree.setFilter(PathFilter.create(within));
            }
            while (tree.next()) {
                String path = within.isEmpty() ? tree.getPathString() : below(within, tree.getPathString());
                if (!path.isEmpty() && !hidden(path)) {
                    entries.add(entry(path, repository, tree.getFileMode(0), tree.getObjectId(0)));
                }
            }
        }
        entries.sort(Comparator.comparing(Entry::path));
        return List.copyOf(entries);
    }

    private static String below(String folder, String path) {
        return path.startsWith(folder + "/") ? path.substring(folder.length() + 1) : "";
    }

    private static boolean hidden(String path) {
        return path.startsWith(".") || path.contains("/.") || path.split("/", -1).length > DEEPEST;
    }

    private static Entry entry(String path, Repository repository, FileMode mode, ObjectId id) throws IOException {
        if (!mode.equals(FileMode.REGULAR_FILE) && !mode.equals(FileMode.EXECUTABLE_FILE)) {
            return unreadable(path, "it is a link, and in a revision links are not followed");
        }
        File directory = repository.getDirectory();
        return new Entry(path, true, repository.open(id).getSize(), () -> {
            try (Repository again =
                    new FileRepositoryBuilder().setGitDir(directory).build()) {
                return new ByteArrayInputStream(again.open(id).getCachedBytes(LARGEST));
            } catch (LargeObjectException tooLarge) {
                throw new IOException("it holds more than " + LARGEST + " bytes", tooLarge);
            }
        });
    }

    private static Entry unreadable(String path, String why) {
        return new Entry(path, true, Entry.UNREADABLE, () -> {
            throw new IOException(why);
        });
    }

    /** The commit, in enough digits to tell it. */
    public String commit() {
        return commit.substring(0, SHORT);
    }

    @Override
    public List<Entry> entries() {
        return entries;
    }

    @Override
    public LocalDate today() {
        return today;
    }
}
