package org.cellfile.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.cellfile.Generator;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code check FOLDER}. */
@Command(
        name = "check",
        description = "Recomputes a cell and tells everything that does not hold, also what has fallen due.",
        mixinStandardHelpOptions = true)
final class CheckVerb implements Callable<Integer> {

    @Mixin
    private CellArguments cell = new CellArguments();

    @Mixin
    private DayOption judged = new DayOption();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        Verdict verdict =
                new Generator().check(cell.world(command), judged.day(command)).verdict();
        cell.tell(verdict, verdict.outcome(), command.getOut());
        return verdict instanceof Refused ? Main.REFUSED : Main.CLEAN;
    }
}
