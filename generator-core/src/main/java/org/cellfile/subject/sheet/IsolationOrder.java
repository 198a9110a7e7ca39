package org.cellfile.subject.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.energy.Energy;

/**
 * The sheet tells what was stated of the energies in the order of 29 CFR 1910.147(d)(2) to (6): shut down, isolate, lock, release,
 * verify (published: the text of the regulation in a reprint). Here each stated step is looked at, whether its words do in its place
 * what belongs to another. Each language says by which words that is known.
 */
final class IsolationOrder {

    /** A step does what belongs to another place of the order. */
    static final FindingId OUT_OF_ORDER = new FindingId("energy.out-of-order");

    private static final String ORDER =
            "29 CFR 1910.147(d)(2) to (6), published: the text of the regulation in a reprint";

    /** In their order; what each does, as it is told. */
    private enum Place {
        SHUT_DOWN("stops the cell"),
        ISOLATE("isolates an energy"),
        LOCK("hangs a lock"),
        RELEASE("lets out what is stored"),
        VERIFY("looks whether an energy is left");

        private final String does;

        Place(String does) {
            this.does = does;
        }

        /** As it is written in the description. */
        String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The words by which a sentence is known to do this. */
        Optional<String> seen(String sentence, Wording wording) {
            return switch (this) {
                case SHUT_DOWN -> IsolationWords.said(sentence, "stopping", wording);
                case ISOLATE -> IsolationWords.said(sentence, "isolating", wording);
                case LOCK -> IsolationWords.said(sentence, IsolationWords.LOCKING, wording);
                case RELEASE -> IsolationWords.said(sentence, "releasing", wording);
                case VERIFY -> IsolationWords.said(sentence, "verifying", wording);
            };
        }
    }

    private final Wording wording;
    private final Findings findings;

    private IsolationOrder(Wording wording, Findings findings) {
        this.wording = wording;
        this.findings = findings;
    }

    /** Looks at every step in the language in which it is written. */
    static void report(PostedCell cell, Findings findings) {
        Sheets sheets = cell.sheets();
        Language.of(sheets.ownLanguage(), sheets.files())
                .map(language -> new Wording(EnergyIsolation.ID, language, sheets.translations(new Findings())))
                .map(wording -> new IsolationOrder(wording, findings))
                .ifPresent(order -> cell.energies().ifPresent(energies -> {
                    energies.shutDown().forEach(step -> order.hold(step, Place.SHUT_DOWN));
                    energies.sources().forEach(order::hold);
                }));
    }

    private void hold(Energy energy) {
        hold(energy.isolate(), Place.ISOLATE);
        hold(energy.lock(), Place.LOCK);
        energy.released().ifPresent(release -> hold(release, Place.RELEASE));
        hold(energy.verify(), Place.VERIFY);
    }

    private void hold(Stated<String> step, Place place) {
        if (step.value().isEmpty()) {
            return;
        }
        List<String> sentences = Arrays.asList(Contradictions.SENTENCE.split(step.characters(), -1));
        sentences.stream()
                .flatMap(sentence -> against(sentence, sentence.equals(sentences.get(sentences.size() - 1)), place))
                .findFirst()
                .ifPresent(against -> findings.add(Finding.refuses(
                                OUT_OF_ORDER,
                                "",
                                step.where(),
                                against,
                                "write each step where it belongs: under `shut-down` what stops the cell, then for each energy"
                                        + " `isolate`, `lock`, `release` and `verify`, as it is done at the machine")
                        .because(List.of("the order is that of " + ORDER))));
    }

    /** What a sentence does that does not belong to its place. The last may pass on to the next place. */
    private Stream<String> against(String sentence, boolean last, Place place) {
        Stream<String> undone = Stream.concat(
                IsolationWords.said(sentence, IsolationWords.UNLOCKING, wording)
                        .map(word -> said(word, "takes off a lock", place))
                        .stream(),
                place == Place.VERIFY
                        ? Stream.empty()
                        : IsolationWords.said(sentence, IsolationWords.ENERGISING, wording)
                                .map(word -> said(word, "gives energy back", place))
                                .stream());
        Stream<String> elsewhere = Arrays.stream(Place.values())
                .filter(other -> other != place && !passes(place, other, last))
                .flatMap(other -> other.seen(sentence, wording).map(word -> said(word, other.does, place)).stream());
        return Stream.concat(undone, elsewhere);
    }

    /**
     * True when a step of that place may say the words of the other: a locking step names the switch that it locks, what lets
     * something out or looks whether something is left does it again, and the last words of a step pass on to the next place. A cell
     * that is only switched off was not shut down.
     */
    private static boolean passes(Place place, Place other, boolean last) {
        return switch (other) {
            case SHUT_DOWN, LOCK -> last && place == Place.ISOLATE && other == Place.LOCK;
            case ISOLATE -> place != Place.SHUT_DOWN;
            case RELEASE -> place == Place.VERIFY || (last && place == Place.LOCK);
            case VERIFY -> last && place == Place.RELEASE;
        };
    }

    private static String said(String word, String does, Place place) {
        return "`" + word + "` in this step " + does + ", and it stands under `" + place.key() + "`";
    }
}
