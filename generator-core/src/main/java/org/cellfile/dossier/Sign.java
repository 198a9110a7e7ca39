package org.cellfile.dossier;

import java.util.Locale;
import org.cellfile.dossier.Sheet.Kind;

/**
 * A sign drawn beside words, in the shape and the colours of its kind. The drawings are this program's own and take the place of no
 * registered sign.
 */
public enum Sign {
    /** general warning */
    HAZARD(Kind.HAZARD),
    /** a movement that begins by itself */
    AUTOMATIC_START(Kind.HAZARD),
    /** do not reach in */
    PROHIBITION(Kind.PROHIBITION),
    /** nobody goes in */
    NO_ENTRY(Kind.PROHIBITION),
    /** general mandatory action */
    ACTION(Kind.ACTION),
    /** isolate and lock */
    LOCK_OUT(Kind.ACTION),
    /** look, try or measure whether nothing is left */
    VERIFY(Kind.ACTION),
    /** plain information */
    INFORMATION(Kind.INFORMATION),
    /** press the emergency stop */
    EMERGENCY(Kind.EMERGENCY),
    /** first aid */
    FIRST_AID(Kind.EMERGENCY),
    /** free somebody */
    RESCUE(Kind.EMERGENCY);

    private final Kind kind;

    Sign(Kind kind) {
        this.kind = kind;
    }

    /** What it says by its shape and colours. */
    public Kind kind() {
        return kind;
    }

    /** The name of its drawing and of its words. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The plain sign of a kind. */
    public static Sign of(Kind kind) {
        return valueOf(kind.name());
    }
}
