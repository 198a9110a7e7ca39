package org.cellfile.subject.plan;

/** A sort of thing in the drawing of a plan, in the order in which they lie over each other, with its words in the legend. */
enum Drawn {
    RESTRICTED("space to which the robot is limited"),
    WARNING("field in which somebody is only warned"),
    FLOOR("floor on which somebody is detected"),
    ZONE("hazard zone, with all that moves in it"),
    PASSABLE("fixed thing that people get across"),
    STRUCTURE("fixed thing that nobody gets across"),
    HIDING("fixed thing that hides what is behind it"),
    REACH("reach of the robot without overrun"),
    SWING("way of a door"),
    GUARD("fixed guard"),
    DOOR("door, or guard that people open"),
    LINE("line in which somebody is detected"),
    SUSPENDED_FLOOR("floor whose field or mat does not act"),
    SUSPENDED_LINE("safeguard that does not act"),
    DISTANCE("shortest way to a hazard zone, bar: the one required"),
    GOVERNS("that with the least to spare at its hazard zone"),
    ROBOT("base of a robot"),
    CONTROLLER("controller of a robot"),
    SCANNER("scanner"),
    TWO_HAND("two-hand control"),
    DEVICE("device that complements the safeguards"),
    RESET("reset"),
    EMERGENCY_STOP("emergency stop"),
    EMERGENCY_STOP_IDLE("emergency stop that does not act"),
    PLACE("place where somebody works"),
    WAY_OUT("way out"),
    READER("where this sheet hangs");

    private final String words;

    Drawn(String words) {
        this.words = words;
    }

    /** In the legend of the safety file. */
    String words() {
        return words;
    }

    /** As the template knows it. */
    String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
