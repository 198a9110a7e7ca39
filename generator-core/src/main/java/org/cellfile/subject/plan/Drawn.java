package org.cellfile.subject.plan;

/** A sort of thing in the drawing of a plan, in the order in which they lie over each other, with its words in the legend. */
enum Drawn {
    RESTRICTED("space to which the robot is limited"),
    WARNING("field in which somebody is only warned"),
    FLOOR("floor on which somebody is detected"),
    NOT_SEEN("drawn field that its scanner does not see"),
    ZONE("hazard zone, with all that moves in it"),
    PASSABLE("fixed thing that people get across"),
    STRUCTURE("fixed thing that nobody gets across"),
    HIDING("fixed thing that hides what is behind it"),
    REACH("reach of the robot without overrun"),
    SWING("floor over which a door turns"),
    GUARD("fixed guard"),
    DOOR("door, or guard that people open"),
    LINE("line in which somebody is detected"),
    SUSPENDED_FLOOR("floor whose field or mat does not act"),
    SUSPENDED_LINE("safeguard that does not act"),
    DISTANCE("shortest way to a hazard zone, bar: the one required"),
    GOVERNS("governs: exceeds the distance required by the least"),
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

    /** True when it stands at one place and has no size of its own. */
    boolean isSymbol() {
        return compareTo(ROBOT) >= 0;
    }

    /** As the template knows it. */
    String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
