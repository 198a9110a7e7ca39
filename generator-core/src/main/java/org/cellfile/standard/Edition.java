package org.cellfile.standard;

/** One year of one standard. Each edition is a class of its own, found through the service index. */
public interface Edition {

    /** As cited and as a cell chooses it, for example {@code ISO 13855:2010}. */
    String id();

    /** What it is about, in the words of its title. */
    String title();
}
