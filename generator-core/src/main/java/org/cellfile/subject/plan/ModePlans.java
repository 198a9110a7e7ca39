package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.safeguard.Guarding;

/** The plan in each mode: which safeguards act, and what the mode asks of who is inside. */
final class ModePlans {

    private static final String NONE = "none";

    private ModePlans() {}

    static List<Block> sections(Layout layout, List<Mode> modes) {
        List<Block> sections = new ArrayList<>();
        for (Mode mode : modes) {
            List<Block> blocks = new ArrayList<>();
            blocks.add(facts(layout, mode));
            blocks.addAll(new PlanDrawing(layout).in(mode, told(layout, mode)));
            sections.add(new Section("", "Plan in the mode " + mode.name().characters(), blocks));
        }
        return sections;
    }

    private static Facts facts(Layout layout, Mode mode) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Acts", tags(layout, mode, State.ACTIVE)));
        facts.add(new Fact("Suspended", tags(layout, mode, State.SUSPENDED)));
        if (!tags(layout, mode, State.NOT_APPLICABLE).equals(NONE)) {
            facts.add(new Fact("Not applicable", tags(layout, mode, State.NOT_APPLICABLE)));
        }
        facts.add(new Fact("Speed at most", mode.speedLimit().characters()));
        facts.add(new Fact("Inside", inside(mode)));
        return new Facts(facts);
    }

    private static String inside(Mode mode) {
        return mode.inside() == 0
                ? "nobody"
                : mode.inside() + ": " + mode.who().characters()
                        + (mode.enablingDevices().isEmpty()
                                ? ""
                                : "; enabling device "
                                        + mode.enablingDevices().stream()
                                                .map(Stated::characters)
                                                .collect(Collectors.joining(", ")));
    }

    private static String tags(Layout layout, Mode mode, State state) {
        String tags = layout.around().safeguards().stream()
                .map(Guarding::safeguard)
                .filter(safeguard -> mode.state(safeguard) == state)
                .map(safeguard -> safeguard.tag().characters())
                .collect(Collectors.joining(", "));
        return tags.isEmpty() ? NONE : tags;
    }

    private static String told(Layout layout, Mode mode) {
        return "Acting: " + tags(layout, mode, State.ACTIVE) + ". Suspended: " + tags(layout, mode, State.SUSPENDED)
                + ". Not applicable: " + tags(layout, mode, State.NOT_APPLICABLE) + ". Inside: " + inside(mode) + ". ";
    }
}
