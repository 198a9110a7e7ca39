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
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.complement.ComplementaryDevice;
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

    /** Devices that are checked alike stand on one line, each named, so that none is passed over. */
    private static Part checks(PostedCell cell, Wording wording) {
        Part part = wording.tell(wording.part("checks", Kind.ACTION, true), "when");
        part = wording.tell(Steps.nobody(part, wording), LOOK);
        for (Map.Entry<String, List<Tested>> alike : alike(cell).entrySet()) {
            part = wording.tell(part, alike.getKey(), named(alike.getValue(), wording));
        }
        part = wording.tell(wording.tell(part, "checksums"), "wrong", cell.responsible());
        return wording.tell(part, "sign");
    }

    /** Things by kind and test that the operator does at them. */
    private static Map<String, List<Tested>> alike(PostedCell cell) {
        Map<String, List<Tested>> alike = new LinkedHashMap<>();
        Stream.concat(
                        cell.safeguards().stream().map(Guarding::safeguard).map(Tested::of),
                        cell.devices().stream().map((ComplementaryDevice device) -> Tested.of(device)))
                .forEach(thing -> checks(thing)
                        .forEach(check -> alike.computeIfAbsent(check, key -> new ArrayList<>())
                                .add(thing)));
        return alike;
    }

    private static Stream<String> checks(Tested thing) {
        String kind = thing.folder().substring(thing.folder().indexOf('/') + 1);
        return thing.protocol().tests().stream()
                .filter(Test::shift)
                .map(Test::id)
                .filter(test -> !test.equals(LOOK))
                .map(test -> kind + "." + test);
    }

    /** Their tags, those with the same test piece together and the piece behind them. */
    private static String named(List<Tested> things, Wording wording) {
        Map<Optional<Quantity>, List<String>> pieces = new LinkedHashMap<>();
        things.forEach(thing -> pieces.computeIfAbsent(thing.testPiece(), piece -> new ArrayList<>())
                .add(thing.tag().characters()));
        return pieces.entrySet().stream()
                .map(alike -> String.join(", ", alike.getValue())
                        + alike.getKey()
                                .map(piece -> " (" + wording.quantity(piece) + ")")
                                .orElse(""))
                .collect(Collectors.joining("; "));
    }
}
