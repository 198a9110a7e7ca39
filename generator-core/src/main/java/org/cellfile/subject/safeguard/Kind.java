package org.cellfile.subject.safeguard;

import org.cellfile.read.Section;

/**
 * A sort of safeguard. Each is a class of its own with a folder of its own among the templates, found through the service
 * index.
 */
public interface Kind {

    /** As written under {@code kind}; also the name of its folder among the templates. */
    String id();

    /** False when it stands in the way by itself, so that no response time and no stop count. */
    boolean stopsTheHazard();

    /** True when people open it and have to close it again. */
    default boolean closedByHand() {
        return false;
    }

    /** True when an actuator works it, so that a spare one defeats it. */
    default boolean hasActuator() {
        return false;
    }

    /** True when what it does is set in a configuration that can be changed unseen. */
    default boolean configured() {
        return false;
    }

    /** True when it protects only the person who works it, and nobody else. */
    default boolean protectsOnlyItsUser() {
        return false;
    }

    /** Reads the keys that only this kind has. */
    Device read(Section section, String tag);
}
