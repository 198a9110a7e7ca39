package org.cellfile.quantity;

/**
 * Powers of length, time, mass and angle.
 *
 * @param rank 1 for what is only ordered, as performance levels are; else 0
 */
public record Dimension(int length, int time, int mass, int angle, int rank) {

    public static final Dimension NONE = new Dimension(0, 0, 0, 0);
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0);
    public static final Dimension TIME = new Dimension(0, 1, 0, 0);
    public static final Dimension SPEED = new Dimension(1, -1, 0, 0);
    public static final Dimension MASS = new Dimension(0, 0, 1, 0);
    public static final Dimension FORCE = new Dimension(1, -2, 1, 0);
    public static final Dimension PRESSURE = new Dimension(-1, -2, 1, 0);
    public static final Dimension ANGLE = new Dimension(0, 0, 0, 1);
    public static final Dimension RATE = new Dimension(0, -1, 0, 0);
    public static final Dimension LEVEL = new Dimension(0, 0, 0, 0, 1);

    public Dimension(int length, int time, int mass, int angle) {
        this(length, time, mass, angle, 0);
    }

    public Dimension times(Dimension other) {
        return new Dimension(
                length + other.length, time + other.time, mass + other.mass, angle + other.angle, rank + other.rank);
    }

    public Dimension per(Dimension other) {
        return new Dimension(
                length - other.length, time - other.time, mass - other.mass, angle - other.angle, rank - other.rank);
    }

    /** The square root; every power must be even. */
    public Dimension root() {
        if (length % 2 != 0 || time % 2 != 0 || mass % 2 != 0 || angle % 2 != 0 || rank != 0) {
            throw new IllegalArgumentException("no square root of " + this);
        }
        return new Dimension(length / 2, time / 2, mass / 2, angle / 2);
    }

    /** In words, for messages. */
    public String words() {
        if (equals(LENGTH)) {
            return "a length";
        }
        if (equals(TIME)) {
            return "a time";
        }
        if (equals(SPEED)) {
            return "a speed";
        }
        if (equals(MASS)) {
            return "a mass";
        }
        if (equals(ANGLE)) {
            return "an angle";
        }
        if (equals(FORCE)) {
            return "a force";
        }
        if (equals(PRESSURE)) {
            return "a pressure";
        }
        if (equals(RATE)) {
            return "a rate";
        }
        if (equals(LEVEL)) {
            return "a performance level";
        }
        return equals(NONE)
                ? "a number or a percentage"
                : "length^" + length + " time^" + time + " mass^" + mass + " angle^" + angle;
    }
}
