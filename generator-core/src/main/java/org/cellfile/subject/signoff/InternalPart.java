package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Statement;
import org.cellfile.read.Redaction;

/**
 * Something that stays in the plant: values of the description that are not in a copy without internal parts.
 *
 * @param path of their statements, with {@code *} for any one step
 * @param what they tell; empty where the plant named the path itself
 */
public record InternalPart(String path, String what) {

    /**
     * What is always internal. It would help somebody to get at a key or at the spare actuator of a door, or it tells about a person
     * more than a reader must see: name, roles, for whom the person works (a release is the plant's) and since when the person is
     * competent for what. Which these are is decided here, by no standard.
     */
    public static final List<InternalPart> ALWAYS = List.of(
            new InternalPart("mode-keys/*/holder", "who holds a mode key"),
            new InternalPart("mode-keys/*/kept-at", "where a mode key is kept"),
            new InternalPart("spare-actuators/*/locked-at", "where spare actuators are locked away"),
            new InternalPart("spare-actuators/*/holder", "who answers for spare actuators"),
            new InternalPart("no-spares", "where spare actuators went that are not listed"),
            new InternalPart("briefings/*/who", "who was briefed"),
            new InternalPart("people/*/competence", "what qualifies a person"),
            new InternalPart("competences/*/proof", "what proves a competence"));

    /** Names stay: a reader must see who signed, measured and tested. */
    private static final InternalPart NAMES = new InternalPart("people/*/name", "");

    /** What is internal of a cell: always, and by what the plant names. */
    public static List<InternalPart> of(Copies copies) {
        List<InternalPart> parts = new ArrayList<>(ALWAYS);
        copies.internal().forEach(path -> parts.add(new InternalPart(path.characters(), "")));
        return List.copyOf(parts);
    }

    /** True when it is the name of a person. */
    public static boolean isName(Statement statement) {
        return NAMES.holds(statement);
    }

    /** True when a value is one of these; an empty list is none. */
    public boolean holds(Statement statement) {
        if (statement.value().equals("[]")) {
            return false;
        }
        Pattern steps = Pattern.compile(Stream.of(path.split("/", -1))
                .map(step -> step.equals("*") ? "[^/]+" : Pattern.quote(step))
                .collect(Collectors.joining("/")));
        return steps.matcher(statement.path()).matches();
    }

    /** True when a value stands there no more, because this is a copy. */
    public static boolean isLeftOut(Statement statement) {
        return statement.value().contains('"' + Redaction.MARK + '"');
    }
}
