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
        for (Map.Entry<Check, List<String>> alike : alike(cell).entrySet()) {
            part = part.line(
                    alike.getKey().key(),
                    wording.say(
                            "checks." + alike.getKey().key(),
                            String.join(", ", alike.getValue()),
                            alike.getKey().piece().map(wording::quantity).orElse("–")));
        }
        part = wording.tell(wording.tell(part, "checksums"), "wrong", cell.responsible());
        return wording.tell(part, "sign");
    }

    private static Map<Check, List<String>> alike(PostedCell cell) {
        Stream<Tested> things = Stream.concat(
                cell.safeguards().stream().map(Guarding::safeguard).map(Tested::of),
                cell.devices().stream().map((ComplementaryDevice device) -> Tested.of(device)));
        return things.flatMap(thing -> Check.of(thing).map(check -> Map.entry(check, thing)))
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey,
                        LinkedHashMap::new,
                        Collectors.mapping(
                                one -> one.getValue().tag().characters(), Collectors.toCollection(ArrayList::new))));
    }

    /**
     * A test that the operator does in the same way at several devices.
     *
     * @param key kind and test
     * @param piece with which it is done
     */
    record Check(String key, Optional<Quantity> piece) {
        static Stream<Check> of(Tested thing) {
            String kind = thing.folder().substring(thing.folder().indexOf('/') + 1);
            return thing.protocol().tests().stream()
                    .filter(Test::shift)
                    .filter(test -> !test.id().equals(LOOK))
                    .map(test -> new Check(kind + "." + test.id(), thing.testPiece()));
        }
    }
}
