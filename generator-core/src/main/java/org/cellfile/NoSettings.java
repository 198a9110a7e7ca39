package org.cellfile;

import java.io.File;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;
import org.jspecify.annotations.Nullable;

/**
 * The machine as a reader of repositories sees it: without settings of a person or of the machine. Looking for those would start a
 * process and write into folders of the person and of the repository, and what a revision holds does not depend on them.
 */
final class NoSettings extends SystemReader.Delegate {

    NoSettings(SystemReader machine) {
        super(machine);
    }

    @Override
    public FileBasedConfig openUserConfig(@Nullable Config parent, FS files) {
        return new Empty(files);
    }

    @Override
    public FileBasedConfig openSystemConfig(@Nullable Config parent, FS files) {
        return new Empty(files);
    }

    @Override
    public FileBasedConfig openJGitConfig(@Nullable Config parent, FS files) {
        return new Empty(files);
    }

    /** Variables of the environment would move the repository, or name other settings. */
    @Override
    public @Nullable String getenv(String variable) {
        return null;
    }

    private static final class Empty extends FileBasedConfig {

        Empty(FS files) {
            super(new File(""), files);
        }

        @Override
        public void load() {
            // There is nothing to read.
        }

        @Override
        public void save() {
            // Nothing is kept.
        }

        @Override
        public boolean isOutdated() {
            return false;
        }

        /** How coarse the times of files are would be tried out with a file in the repository; two seconds hold everywhere. */
        @Override
        public long getTimeUnit(String section, @Nullable String subsection, String name, long unless, TimeUnit unit) {
            return section.equals("filesystem") ? unit.convert(2, TimeUnit.SECONDS) : unless;
        }
    }
}
