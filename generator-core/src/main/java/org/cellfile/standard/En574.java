package org.cellfile.standard;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Product;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/**
 * What EN 574:1996+A1:2008 asks of a two-hand control, wherever it stands. The values were read in public sources named with
 * each; clause numbers are from memory. ISO 13851, which followed it, keeps these values (from memory), so that a cell has no
 * edition to choose.
 */
public final class En574 {

    /** The types of two-hand control; each does what the one before it does, and more. */
    public static final List<String> TYPES = List.of("I", "II", "III A", "III B", "III C");

    private static final String ID = "EN 574:1996+A1:2008";

    private static final Fixed ASYNCHRONY = new Fixed(
            "t_a,max",
            Quantity.seconds("0.5"),
            reference(
                    "synchronous-actuation",
                    "longest time between the actuators of a type III control",
                    "cl. 5.7",
                    new Published(
                            "Omron Safety handbook PNSPO, p. 24; Moeller, two-hand controls; Axelent Safety Book, enabling"
                                    + " solutions")));
    private static final Fixed EACH = new Fixed(
            "1",
            Quantity.count(1),
            reference(
                    "station-for-each-operator",
                    "stations for each operator, as a two-hand control protects only who works it",
                    "cl. 3.1",
                    new Published(
                            "Axelent Safety Book, enabling solutions; Washington Administrative Code 296-806-45524")));
    private static final Fixed HEIGHT = new Fixed(
            "h_min",
            Quantity.millimetres("1100"),
            reference(
                    "height-on-a-horizontal-surface",
                    "least height of actuators on a horizontal surface",
                    "cl. 8",
                    new Published("Omron Safety handbook PNSPO, p. 27")));

    private En574() {}

    /** What a copy can tell of it: nothing that takes the place of a value, as all were published, but whether it agrees. */
    static List<Asked> asked() {
        return List.of(Asked.of(ASYNCHRONY), Asked.of(EACH), Asked.of(HEIGHT));
    }

    /** True when both actuators have to be worked within a short time of one another. */
    public static boolean synchronous(String type) {
        return type.startsWith("III");
    }

    /** True when both actuators have to be let go before it can be worked again. */
    public static boolean reinitiating(String type) {
        return !type.equals("I");
    }

    /** What a type does, in words. */
    public static String does(String type) {
        return switch (type) {
            case "I" -> "needs both hands at once; releasing either actuator ends its output";
            case "II" -> "as type I, and begins again only after both actuators were released";
            default -> "as type II, and begins only when both actuators are worked nearly together";
        };
    }

    /** The longest time between both actuators that a type III control may accept, in s. */
    public static Derived longestAsynchrony(String tag) {
        return bound(tag, "longest-asynchrony", ASYNCHRONY, Rounding.down(Quantity.seconds("0.1")));
    }

    /** The least height of actuators on a horizontal surface above the floor, in mm. */
    public static Derived leastHeight(String tag) {
        return bound(tag, "least-actuator-height", HEIGHT, Rounding.up(Quantity.millimetres("1")));
    }

    /**
     * The least number of stations.
     *
     * @param operators who are in reach of the hazard while it is worked, a count
     */
    public static Derived leastStations(String tag, Term operators) {
        return new Derived(
                tag,
                "least-stations",
                "least number of stations",
                "n_s",
                EACH.reference().clause().toString(),
                new Product(EACH, operators),
                Rounding.up(Quantity.count(1)));
    }

    private static Derived bound(String tag, String name, Fixed fixed, Rounding rounding) {
        return new Derived(
                tag,
                name,
                fixed.reference().name(),
                fixed.symbol(),
                fixed.reference().clause().toString(),
                fixed,
                rounding);
    }

    private static Reference reference(String id, String name, String clause, Standing standing) {
        return new Reference("en-574-1996." + id, name, new Clause(ID, clause), standing);
    }
}
