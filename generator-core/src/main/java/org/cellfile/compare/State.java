package org.cellfile.compare;

import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.subject.identity.IdentityChapter;

/**
 * A cell as it was described at one time.
 *
 * @param source where the description was found, in words
 * @param refused what refuses it, counted; empty when nothing does
 * @param substance what of it is signed
 */
public record State(String source, Cell cell, Optional<String> refused, Substance substance) {

    public static State of(String source, Cell cell, Optional<String> refused) {
        return new State(source, cell, refused, cell.substance());
    }

    /** Which cell, and which state of its description. */
    public Label label() {
        return IdentityChapter.label(cell.identity().facts());
    }

    /** What people stated; the ledger holds what the program derived, which is compared as such. */
    List<Statement> statements() {
        return cell.statements().stream()
                .filter(statement -> !statement.isDerived())
                .toList();
    }

    /** True when something is stated at that path, or below it. */
    boolean states(String path) {
        return statements().stream()
                .map(Statement::path)
                .anyMatch(one -> one.equals(path) || one.startsWith(path + "/"));
    }
}
