package org.cellfile.subject.function;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.cellfile.cases.AsRead;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Reading;
import org.cellfile.standard.Iso13849Part1Ed2015;
import org.cellfile.trace.Derived;

/** Parts, subsystems and functions as a file describes them, read by the program's own reader and recomputed. */
record AsDescribed(ControlSystem system) {

    /** Of the text of a file without its first line; there is nothing to find in it, but that it is not the whole cell. */
    static AsDescribed read(String text) {
        Findings findings = new Findings();
        Reading.Sources sources = AsRead.file("functions.yaml", "cellfile: 1\n" + text, findings);
        ControlSystem.Described described = ControlSystem.Described.read(sources.top());
        sources.finish();
        assertThat(findings.sorted())
                .filteredOn(finding -> !finding.id().words().equals("tag.unknown"))
                .extracting(Finding::sentence)
                .isEmpty();
        return new AsDescribed(ControlSystem.of(
                described, new Iso13849Part1Ed2015(), List.of(), List.of(), List.of(), function -> Minimums.NONE));
    }

    PartLife part() {
        return system.parts().get(0);
    }

    SubsystemLevel subsystem() {
        return system.subsystems().get(0);
    }

    FunctionLevel function() {
        return system.functions().get(0);
    }

    /** A derived value by its tag. */
    Derived derived(String tag) {
        return system.recomputed().stream()
                .flatMap(one -> one.derived().stream())
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow(() -> new AssertionError(tag + " is not derived"));
    }

    /** As it is printed. */
    String printed(String tag) {
        return derived(tag).rounded().map(Quantity::toString).orElse("withheld");
    }

    /** What was recorded and does not agree. */
    List<String> findings() {
        return system.recomputed().stream()
                .flatMap(one -> one.recorded().claims(one.derived()).stream())
                .map(claim -> claim.finding())
                .flatMap(Optional::stream)
                .map(Finding::sentence)
                .toList();
    }
}
