package org.cellfile.subject.function;

import java.util.List;
import java.util.stream.Collectors;

/** The functions that a subsystem takes part in. */
record Uses(List<String> functions) {

    /** More names would say less than their number. */
    private static final int MOST_NAMED = 4;

    static Uses of(SubsystemLevel subsystem, List<FunctionLevel> functions) {
        return new Uses(functions.stream()
                .filter(function -> function.stages().stream()
                        .flatMap(stage -> stage.subsystem().stream())
                        .anyMatch(subsystem::equals))
                .map(FunctionLevel::tag)
                .toList());
    }

    String inWords() {
        if (functions.isEmpty()) {
            return "in no function";
        }
        return functions.size() > MOST_NAMED
                ? "in " + functions.size() + " functions"
                : functions.stream().collect(Collectors.joining(", ", "in ", ""));
    }

    /** Only how many. */
    String counted() {
        return "in " + functions.size() + (functions.size() == 1 ? " function" : " functions");
    }
}
