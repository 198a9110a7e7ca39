package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * How hard it is to find a second actuator that works an interlock. Types: IDEC, ISO 14119 page. Levels: Pizzato general catalogue
 * 2025-2026, p. 419 (ISO 14119:2024): low up to 9 variations, medium up to 1000, high above.
 *
 * @param type 1 and 2 are worked mechanically, 3 and 4 without contact; 1 and 3 are uncoded
 * @param variations how many codes the actuator is made in
 * @param level as its maker gives it
 */
record Coding(Stated<String> type, Stated<Quantity> variations, Stated<String> level) {

    /** The stated coding does not fit the type or the number of variations. */
    static final FindingId CONTRADICTED = new FindingId("interlocked-door.coding-contradicted");

    private static final Set<String> UNCODED = Set.of("1", "3");
    private static final Quantity MOST_OF_LOW = Quantity.count(9);
    private static final Quantity MOST_OF_MEDIUM = Quantity.count(1000);

    static Optional<Coding> read(Section safeguard, String tag) {
        return safeguard.sectionIfStated("coding").map(section -> {
            Coding coding = new Coding(
                    section.word("type", List.of("1", "2", "3", "4")),
                    section.countIfStated("variations"),
                    section.wordIfStated("level", List.of("low", "medium", "high")));
            section.close();
            coding.contradiction()
                    .ifPresent(because -> section.report(Finding.refuses(
                            CONTRADICTED,
                            tag,
                            coding.level.where(),
                            "the coding of `" + tag + "` is stated as " + coding.level.characters() + ", and "
                                    + because,
                            "read type and variations in the data sheet of the interlock")));
            return coding;
        });
    }

    private boolean uncoded() {
        return type.value().filter(UNCODED::contains).isPresent();
    }

    /** The level that the number of variations gives; empty while that is not stated. */
    Optional<String> derivedLevel() {
        return variations
                .value()
                .map(number -> number.compareTo(MOST_OF_LOW) <= 0
                        ? "low"
                        : number.compareTo(MOST_OF_MEDIUM) <= 0 ? "medium" : "high");
    }

    private Optional<String> contradiction() {
        return level.value().flatMap(stated -> {
            if (uncoded()) {
                return Optional.of("type " + type.characters() + " is uncoded");
            }
            return derivedLevel()
                    .filter(derived -> !derived.equals(stated))
                    .map(derived -> variations.characters() + " variations make it " + derived
                            + ": low up to 9, medium up to 1000, high above");
        });
    }

    Fact fact() {
        String kind = "type " + type.characters() + ", "
                + (type.value().filter(Set.of("1", "2")::contains).isPresent() ? "mechanical" : "without contact");
        Optional<String> known = derivedLevel().or(level::value);
        return new Fact(
                "Coding",
                kind
                        + (uncoded()
                                ? ", uncoded"
                                : known.map(word -> ", coded " + word).orElse("")),
                variations
                        .value()
                        .map(number -> variations.characters() + " variations")
                        .orElse(""));
    }
}
