package org.cellfile.subject.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.standard.Exposure;
import org.cellfile.subject.hazard.Hazard.Measure;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Withheld;

/** A hazard with the performance level that what safeguards against it must reach. */
public final class Risk implements Recomputed {

    /** A measure that is no safeguarding names safeguards. */
    public static final FindingId ANOTHER_SORT = new FindingId("hazard.measure-of-another-sort");

    /** The measures make it worse. */
    public static final FindingId WORSE = new FindingId("hazard.worse-after");

    /** It hurts less, and nothing about the design was changed. */
    public static final FindingId SEVERITY = new FindingId("hazard.severity-without-design");

    /** Nobody has recorded the required performance level. */
    public static final FindingId NOT_RECORDED = new FindingId("hazard.not-recorded");

    private final Hazard hazard;
    private final Derived required;

    /**
     * @param standard with the risk graph; empty when the cell puts none in force
     */
    public Risk(Hazard hazard, Optional<ControlStandard> standard) {
        this.hazard = hazard;
        this.required = new Derived(
                hazard.tag().characters(),
                "required-level",
                "required performance level",
                "PL_r",
                standard.map(one -> one.id() + ", Annex A").orElse(""),
                standard.map(one -> one.requiredLevel(hazard.before()))
                        .orElseGet(() -> new Withheld("PL_r", "no edition with a risk graph is in force")),
                Rounding.up(Quantity.level("a")));
    }

    public Hazard hazard() {
        return hazard;
    }

    /** The required performance level. */
    public Derived required() {
        return required;
    }

    @Override
    public String tag() {
        return hazard.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return List.of(required);
    }

    @Override
    public Recorded recorded() {
        return hazard.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        hazard.measures().forEach(measure -> anotherSort(measure).ifPresent(faults::add));
        Exposure before = hazard.before();
        Exposure after = hazard.after();
        Stream.of(
                        worse("severity", before.severity(), after.severity()),
                        worse("frequency", before.frequency(), after.frequency()),
                        worse("possibility of avoiding", before.avoidance(), after.avoidance()),
                        severity(),
                        notRecorded())
                .flatMap(Optional::stream)
                .forEach(faults::add);
        return faults;
    }

    private Optional<Finding> anotherSort(Measure measure) {
        if (measure.by().isEmpty() || !(measure.is(Hazard.DESIGN) || measure.is(Hazard.INFORMATION))) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                ANOTHER_SORT,
                tag(),
                measure.by().get(0).where(),
                "a measure of the sort `" + measure.sort().characters() + "` against `" + tag() + "` names `"
                        + measure.by().get(0).characters() + "`, and what is named under `by` safeguards",
                "name it in a measure of the sort `" + Hazard.SAFEGUARDED
                        + "`, and keep this one for what changes the machine or tells people about it"));
    }

    /** The higher digit is the worse in all three. */
    private Optional<Finding> worse(String what, Stated<String> before, Stated<String> after) {
        if (!below(before, after)) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                WORSE,
                tag(),
                after.where(),
                "the " + what + " of `" + tag() + "` is " + before.characters() + " with nothing done against it, and "
                        + after.characters() + " after the measures",
                "see in the risk assessment which of the two is written wrongly; a hazard that a measure brings with it is"
                        + " described as a hazard of its own"));
    }

    /** Nothing is known where one of the two could not be read. */
    private static boolean below(Stated<String> one, Stated<String> other) {
        return one.value()
                .flatMap(low -> other.value().map(high -> low.compareTo(high) < 0))
                .orElse(false);
    }

    private Optional<Finding> severity() {
        boolean byDesign = hazard.measures().isEmpty()
                || hazard.measures().stream()
                        .anyMatch(measure -> measure.is(Hazard.DESIGN)
                                || measure.sort().value().isEmpty());
        Stated<String> after = hazard.after().severity();
        if (byDesign || !below(after, hazard.before().severity())) {
            return Optional.empty();
        }
        return Optional.of(Finding.warns(
                        SEVERITY,
                        tag(),
                        after.where(),
                        "the severity of `" + tag() + "` falls to " + after.characters()
                                + ", and none of its measures is one of design",
                        "see in the risk assessment why it hurts less, and state that as a measure of the sort `"
                                + Hazard.DESIGN + "`")
                .because(
                        List.of("what safeguards or informs changes how often somebody is exposed and whether it can be"
                                + " avoided, not how badly it hurts: common practice")));
    }

    private Optional<Finding> notRecorded() {
        if (required.value().isEmpty() || recorded().of(required).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(Finding.barsRelease(
                NOT_RECORDED,
                tag(),
                recorded().where(),
                "nobody has recorded the " + required.words() + " of `" + tag() + "`",
                "follow the risk graph by hand and state the level as `" + required.name()
                        + "` under `stated`; a value copied from this program proves nothing"));
    }
}
