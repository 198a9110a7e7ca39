package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;
import org.cellfile.subject.function.ControlSystem;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.subject.function.FunctionLevel.Stage;
import org.cellfile.subject.function.PartLife;
import org.cellfile.subject.function.SubsystemLevel;

/**
 * A part is monitored by something that takes no part in the function, so that its coverage is claimed from what may not be there when
 * the function is. Where the category has no test the coverage does not count, and nothing is claimed.
 */
@AutoService(Check.class)
public final class RefuseForeignMonitor implements Check {

    public static final FindingId ID = new FindingId("function.foreign-monitor");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Set<String> known = known(cell.controlSystem());
        List<Finding> findings = new ArrayList<>();
        for (FunctionLevel function : cell.controlSystem().functions()) {
            boolean read = function.stages().stream()
                    .allMatch(stage -> stage.subsystem().isPresent());
            if (read) {
                findings.addAll(foreign(function, known));
            }
        }
        return findings;
    }

    private static Set<String> known(ControlSystem system) {
        Set<String> known = new HashSet<>();
        system.parts().forEach(part -> known.add(part.tag()));
        system.subsystems().forEach(subsystem -> known.add(subsystem.tag()));
        return known;
    }

    private static List<Finding> foreign(FunctionLevel function, Set<String> known) {
        Set<String> here = new HashSet<>();
        subsystems(function).forEach(subsystem -> {
            here.add(subsystem.tag());
            subsystem.parts().forEach(part -> here.add(part.tag()));
        });
        List<Finding> findings = new ArrayList<>();
        for (Stage stage : function.stages()) {
            Map<String, List<PartLife>> byMonitor = new LinkedHashMap<>();
            stage.subsystem().filter(RefuseForeignMonitor::coverageCounts).stream()
                    .flatMap(subsystem -> subsystem.channels().stream())
                    .flatMap(channel -> channel.parts().stream())
                    .distinct()
                    .forEach(part -> part.part().monitoredBy().stream()
                            .map(Stated::characters)
                            .filter(monitor -> known.contains(monitor) && !here.contains(monitor))
                            .forEach(monitor -> byMonitor
                                    .computeIfAbsent(monitor, tag -> new ArrayList<>())
                                    .add(part)));
            byMonitor.forEach((monitor, parts) -> findings.add(foreign(function, stage, monitor, parts)));
        }
        return findings;
    }

    private static boolean coverageCounts(SubsystemLevel subsystem) {
        return subsystem.subsystem().category().value().filter(Category::tested).isPresent();
    }

    private static Stream<SubsystemLevel> subsystems(FunctionLevel function) {
        return function.stages().stream().flatMap(stage -> stage.subsystem().stream());
    }

    private static Finding foreign(FunctionLevel function, Stage stage, String monitor, List<PartLife> parts) {
        String tags = String.join("`, `", parts.stream().map(PartLife::tag).toList());
        return Finding.refuses(
                        ID,
                        function.tag(),
                        stage.element().subsystem().where(),
                        "`" + tags + "` of `" + stage.element().subsystem().characters() + "` "
                                + (parts.size() == 1 ? "is" : "are") + " monitored by `" + monitor
                                + "`, which is not in the chain of `" + function.tag() + "`",
                        "list what monitors in the chain, or count the coverage only where it is monitored: describe the subsystem as it"
                                + " is in this function")
                .because(parts.stream()
                        .map(part -> "coverage of `" + part.tag() + "`: "
                                + part.part().coverage().characters() + ", "
                                + part.part().coverage().where().position())
                        .toList());
    }
}
