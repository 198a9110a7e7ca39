package org.cellfile.standard;

import java.util.List;
import java.util.Optional;

/** One year of one standard, or of a regulation. Each edition is a class of its own, found through the service index. */
public interface Edition {

    /** As cited and as a cell chooses it, for example {@code ISO 13855:2010}. */
    String id();

    /** What it is about, in the words of its title. */
    String title();

    /** What a reader of every value that rests on it has to know, as a sentence. */
    default Optional<String> remark() {
        return Optional.empty();
    }

    /** The same edition with the values that were read in copies of it. */
    Edition reading(CopyValues copy);

    /** What can be told it from a copy. */
    List<Asked> asked();

    /** Its id as part of a tag, for example {@code iso-13855-2010}. */
    default String slug() {
        return id().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
