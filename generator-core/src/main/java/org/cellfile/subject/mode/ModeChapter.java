package org.cellfile.subject.mode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Demands;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.safeguard.Safeguard;

/** The mode matrix: what holds in each mode, and what becomes of each safeguard in it. */
public final class ModeChapter {

    private static final String NONE = "–";

    private final List<Operation> operations;
    private final List<Mode> modes;
    private final List<Safeguard> safeguards;
    private final List<ComplementaryDevice> devices;

    private ModeChapter(List<Operation> operations, List<Safeguard> safeguards, List<ComplementaryDevice> devices) {
        this.operations = operations;
        this.modes = operations.stream().map(Operation::mode).toList();
        this.safeguards = safeguards;
        this.devices = devices;
    }

    public static Chapter chapter(
            List<Operation> operations, List<Safeguard> safeguards, List<ComplementaryDevice> devices) {
        return new ModeChapter(operations, safeguards, devices).chapter();
    }

    private Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        byHand().ifPresent(blocks::add);
        blocks.add(holds());
        blocks.add(states());
        inPlace().ifPresent(blocks::add);
        blocks.add(Demands.table(operations.stream().map(Operation::demands).toList()));
        return new Chapter("modes", "Modes", blocks);
    }

    /** What whoever goes in has to know before anything else. */
    private Optional<Block> byHand() {
        List<String> points = modes.stream()
                .filter(mode -> mode.manual() || mode.inside() > 0)
                .map(this::byHand)
                .toList();
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new Box(
                        Tone.CAUTION,
                        "When the robot is moved by hand, or somebody is inside",
                        List.of(new Points(points))));
    }

    private String byHand(Mode mode) {
        List<Safeguard> stopping = stopping();
        List<Safeguard> acting = stopping.stream()
                .filter(safeguard -> mode.state(safeguard) == State.ACTIVE)
                .toList();
        String safeguarding;
        if (acting.isEmpty()) {
            safeguarding = "none of the " + stopping.size()
                    + " safeguards that stop a movement acts, and no safeguard stops the robot when somebody walks in.";
        } else if (acting.size() == stopping.size()) {
            safeguarding = "every safeguard acts.";
        } else {
            safeguarding = "of the " + stopping.size() + " safeguards that stop a movement only these act: "
                    + tags(acting) + ".";
        }
        return Text.capital(mode.name().characters()) + ": " + safeguarding + " " + inside(mode);
    }

    private List<Safeguard> stopping() {
        return safeguards.stream()
                .filter(safeguard -> safeguard.kind().stopsTheHazard())
                .toList();
    }

    private static String inside(Mode mode) {
        return switch (mode.inside()) {
            case 0 -> "Nobody is inside.";
            case 1 -> "One person is inside and nobody else: " + mode.who().characters() + ".";
            default ->
                mode.inside() + " persons are inside and nobody else: "
                        + mode.who().characters() + ".";
        };
    }

    private Table holds() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("Sort", mode -> mode.sort().characters().replace('-', ' ')));
        rows.add(row("Speed limit", mode -> mode.speedLimit().characters()));
        rows.add(row("Persons inside", mode -> mode.inside() == 0 ? "none" : String.valueOf(mode.inside())));
        rows.add(row("Who", mode -> mode.who().value().orElse(NONE)));
        rows.add(row(
                "Enabling devices",
                mode -> mode.enablingDevices().isEmpty() ? NONE : Inside.tags(mode.enablingDevices())));
        rows.add(row("Hold-to-run", mode -> mode.holdToRun().characters()));
        rows.add(row("Remote start", mode -> mode.remoteStart().characters().replace('-', ' ')));
        rows.add(row("Emergency stops", this::emergencyStops));
        rows.add(row("Selected by", this::selectedBy));
        return new Table("What holds in each mode", columns("", 4), rows);
    }

    private String emergencyStops(Mode mode) {
        long all = devices.stream()
                .filter(device -> device.sort() instanceof EmergencyStop)
                .count();
        return mode.emergencyStops().size() == all ? "all " + all + " of the cell" : Inside.tags(mode.emergencyStops());
    }

    private String selectedBy(Mode mode) {
        String selectors = devices.stream()
                .filter(device -> device.sort() instanceof ModeSelector selector
                        && selector.modes().stream()
                                .anyMatch(one -> one.value().equals(mode.tag().value())))
                .map(device -> device.tag().characters())
                .collect(Collectors.joining(", "));
        return selectors.isEmpty() ? NONE : selectors;
    }

    private Table states() {
        return new Table(
                "What becomes of each safeguard",
                columns("Safeguard", 4),
                safeguards.stream()
                        .map(safeguard -> row(safeguard.tag().characters(), mode -> marked(mode.state(safeguard))))
                        .toList());
    }

    /** A mark that is told from the others at a glance and in black and white, and the word beside it. */
    private static String marked(State state) {
        return switch (state) {
            case ACTIVE -> "■ active";
            case SUSPENDED -> "□ suspended";
            case NOT_APPLICABLE, UNSTATED -> NONE + " " + state.words();
        };
    }

    /** Safeguards for which the same is said stand together. */
    private Optional<Block> inPlace() {
        List<List<String>> rows = new ArrayList<>();
        for (Mode mode : modes) {
            Map<String, List<Safeguard>> said = new LinkedHashMap<>();
            for (Safeguard safeguard : safeguards) {
                said(mode, safeguard, mode.state(safeguard))
                        .ifPresent(words -> said.computeIfAbsent(words, key -> new ArrayList<>())
                                .add(safeguard));
            }
            said.forEach((words, of) -> rows.add(List.of(
                    Text.capital(mode.name().characters()),
                    of.equals(stopping()) ? "every safeguard that stops a movement" : tags(of),
                    words)));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Table(
                        "What takes the place of a safeguard, or why it is not applicable",
                        List.of(Column.text("Mode", 3), Column.text("Safeguards", 6), Column.text("In its place", 6)),
                        rows));
    }

    private static Optional<String> said(Mode mode, Safeguard safeguard, State state) {
        return switch (state) {
            case SUSPENDED -> Optional.of(mode.compensation(safeguard).characters());
            case NOT_APPLICABLE ->
                mode.notApplicableBecause(safeguard).map(because -> "not applicable: " + because.characters());
            case ACTIVE, UNSTATED -> Optional.empty();
        };
    }

    private List<Column> columns(String first, int share) {
        List<Column> columns = new ArrayList<>(List.of(Column.text(first, share)));
        modes.forEach(mode -> columns.add(Column.text(Text.capital(mode.name().characters()), 4)));
        return columns;
    }

    private List<String> row(String first, Function<Mode, String> cell) {
        return Stream.concat(Stream.of(first), modes.stream().map(cell)).toList();
    }

    private static String tags(List<Safeguard> safeguards) {
        return safeguards.stream().map(Safeguard::tag).map(Stated::characters).collect(Collectors.joining(", "));
    }
}
