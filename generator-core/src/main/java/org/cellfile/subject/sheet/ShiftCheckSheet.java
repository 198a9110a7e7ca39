package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.verification.Protocol.Test;
import org.cellfile.subject.verification.Tested;

/**
 * The check of the safeguards at the beginning of each shift: what the protocols of the kinds mark for the operator, in few words.
 * The form on which it is signed says the same at length.
 */
@AutoService(SheetSort.class)
public final class ShiftCheckSheet implements SheetSort {

    /** The test by looking, which every protocol calls so; it is told once for all devices. */
    private static final String LOOK = "look";

    @Override
    public String id() {
        return "shift-check";
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        return List.of(checks(cell, wording), EverySheet.never(cell, wording), EverySheet.emergency(cell, wording));
    }

    /**
     * Devices that are checked alike stand on one line, each named, so that none is passed over. Tests in which reset or start is
     * pressed come last, directly behind the step by which whoever presses sees before each press that nobody is inside.
     */
    private static Part checks(PostedCell cell, Wording wording) {
        Map<String, List<Tested>> starting = alike(cell, true);
        Part part = wording.tell(wording.part("checks", Kind.ACTION, true), "when");
        part = wording.tell(starting.isEmpty() ? Steps.nobody(part, wording) : part, LOOK);
        part = tell(alike(cell, false), part, cell, wording);
        if (!starting.isEmpty()) {
            part = tell(starting, wording.tell(part, "nobody"), cell, wording);
        }
        part = wording.tell(wording.tell(part, "checksums"), "wrong", cell.responsible());
        return wording.tell(part, "sign");
    }

    private static Part tell(Map<String, List<Tested>> checks, Part part, PostedCell cell, Wording wording) {
        Part longer = part;
        for (Map.Entry<String, List<Tested>> alike : checks.entrySet()) {
            longer = wording.tell(longer, alike.getKey(), named(alike.getValue(), cell, wording));
        }
        return longer;
    }

    /** Safeguards by kind and test that the operator does at them: those in which reset or start is pressed, or the others. */
    private static Map<String, List<Tested>> alike(PostedCell cell, boolean starts) {
        Map<String, List<Tested>> alike = new LinkedHashMap<>();
        cell.safeguards().stream()
                .map(Guarding::safeguard)
                .map(Tested::of)
                .forEach(thing -> checks(thing, starts)
                        .forEach(check -> alike.computeIfAbsent(check, key -> new ArrayList<>())
                                .add(thing)));
        return alike;
    }

    private static Stream<String> checks(Tested thing, boolean starts) {
        return thing.protocol().tests().stream()
                .filter(Test::shift)
                .filter(test -> test.starts() == starts)
                .map(Test::id)
                .filter(test -> !test.equals(LOOK))
                .map(test -> kind(thing) + "." + test);
    }

    private static String kind(Tested thing) {
        return thing.folder().substring(thing.folder().indexOf('/') + 1);
    }

    /** What they are, then the tag and the place of each; those with the same test piece together and the piece behind them. */
    private static String named(List<Tested> things, PostedCell cell, Wording wording) {
        Map<Optional<Quantity>, List<String>> pieces = new LinkedHashMap<>();
        things.forEach(thing -> pieces.computeIfAbsent(thing.testPiece(), piece -> new ArrayList<>())
                .add(Steps.place(thing.tag(), thing.safeguard().orElseThrow().position(), cell, wording)));
        return Text.capital(wording.shared("kind." + kind(things.get(0))))
                + pieces.entrySet().stream()
                        .map(alike -> " " + String.join(", ", alike.getValue())
                                + alike.getKey()
                                        .map(piece -> ", " + wording.quantity(piece))
                                        .orElse(""))
                        .collect(Collectors.joining(";"));
    }
}
