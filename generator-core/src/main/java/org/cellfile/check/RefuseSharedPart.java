package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.subject.function.SubsystemLevel;

/** One part stands in the channels of two subsystems of one function, so that one of the two is not built as it is described. */
@AutoService(Check.class)
public final class RefuseSharedPart implements Check {

    public static final FindingId ID = new FindingId("function.part-twice");

    /** A part in the two subsystems that name it. */
    private record Shared(String part, String first, String second, Span firstAt, Span secondAt) {}

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Map<Shared, List<String>> functions = new LinkedHashMap<>();
        for (FunctionLevel function : cell.controlSystem().functions()) {
            shared(function)
                    .forEach(one -> functions
                            .computeIfAbsent(one, none -> new ArrayList<>())
                            .add(function.tag()));
        }
        return functions.entrySet().stream()
                .map(entry -> finding(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static List<Shared> shared(FunctionLevel function) {
        List<Shared> shared = new ArrayList<>();
        Map<String, Stated<String>> firstAt = new HashMap<>();
        Map<String, String> first = new HashMap<>();
        List<SubsystemLevel> subsystems = function.stages().stream()
                .flatMap(stage -> stage.subsystem().stream())
                .distinct()
                .toList();
        for (SubsystemLevel subsystem : subsystems) {
            subsystem.subsystem().channels().stream()
                    .flatMap(channel -> channel.parts().stream())
                    .forEach(part -> {
                        String in = first.putIfAbsent(part.characters(), subsystem.tag());
                        Stated<String> at = firstAt.putIfAbsent(part.characters(), part);
                        if (in != null && at != null && !in.equals(subsystem.tag())) {
                            shared.add(new Shared(part.characters(), in, subsystem.tag(), at.where(), part.where()));
                        }
                    });
        }
        return shared;
    }

    private static Finding finding(Shared shared, List<String> functions) {
        return Finding.refuses(
                        ID,
                        shared.part(),
                        shared.secondAt(),
                        "`" + shared.part() + "` stands in `" + shared.first() + "` and in `" + shared.second()
                                + "`, both in the chain of `" + String.join("`, `", functions) + "`",
                        "name in each subsystem the part that is really there; what does hang on one part belongs to one subsystem")
                .because(List.of("in `" + shared.first() + "` at "
                        + shared.firstAt().position() + "; its failures would count twice"));
    }
}
