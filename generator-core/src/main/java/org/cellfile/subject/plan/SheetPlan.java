package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Picture.Format;

/** The small plan on a posted sheet: where it hangs, where an emergency stop is and where one gets out. */
public final class SheetPlan {

    /** A column beside the steps, 52 mm wide or more, in which its type is 9 pt at least. */
    private static final Format COLUMN = new Format(new Box(10, 10, 1670, 1110), 1680, 105, 0);

    private static final Map<Drawn, String> KEYS = Map.of(
            Drawn.READER, "reader",
            Drawn.EMERGENCY_STOP, "emergency-stop",
            Drawn.WAY_OUT, "way-out",
            Drawn.DOOR, "door",
            Drawn.ZONE, "zone");

    private SheetPlan() {}

    /**
     * The plan; empty when the place is not on it, and where copies hang at several: their readers would not find themselves.
     *
     * @param places tags of those at which the sheet hangs
     * @param words the fixed ones under a key, in each language of the sheet
     * @param text one of the cell in these languages
     */
    public static Optional<Drawing> of(
            Layout layout,
            List<String> places,
            Function<String, List<String>> words,
            Function<Stated<String>, List<String>> text) {
        List<OperatorPlace> hangs = layout.plan().places().stream()
                .filter(place -> places.contains(place.tag().characters()))
                .filter(place -> place.at().value().isPresent())
                .toList();
        return new PlanDrawing(layout).all().filter(all -> hangs.size() == 1).map(all -> {
            Picture picture = new Picture(all, COLUMN);
            new Scene(layout, picture).drawSmall(hangs.get(0), name -> joined(text.apply(name)));
            return new Drawing(
                    PlanDrawing.TEMPLATE,
                    "",
                    told(layout, hangs, words, text),
                    picture.data(
                            "",
                            "",
                            Optional.empty(),
                            kind -> Optional.ofNullable(KEYS.get(kind))
                                    .map(words)
                                    .orElseGet(List::of)));
        });
    }

    private static String joined(List<String> languages) {
        return languages.stream().distinct().collect(Collectors.joining(" / "));
    }

    private static String told(
            Layout layout,
            List<OperatorPlace> hangs,
            Function<String, List<String>> words,
            Function<Stated<String>, List<String>> text) {
        List<String> told = new ArrayList<>();
        tell(told, words.apply("reader"), hangs.stream().map(OperatorPlace::name), text);
        tell(
                told,
                words.apply("emergency-stop"),
                layout.around().complementary().stream()
                        .map(complement -> complement.device())
                        .filter(device -> device.sort() instanceof EmergencyStop stop && !stop.handHeld())
                        .map(device -> device.position()),
                text);
        tell(told, words.apply("way-out"), layout.plan().waysOut().stream().map(WayOut::name), text);
        return String.join("; ", told);
    }

    private static void tell(
            List<String> told,
            List<String> what,
            Stream<Stated<String>> names,
            Function<Stated<String>, List<String>> text) {
        String all = names.map(text).map(SheetPlan::joined).collect(Collectors.joining(", "));
        if (!all.isEmpty()) {
            told.add(joined(what) + ": " + all);
        }
    }
}
