package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.register.Registers;
import org.cellfile.subject.register.SpareActuator;
import org.cellfile.subject.safeguard.Guarding;

/** A spare actuator that fits no interlocked door, or that is listed where none is said to be. */
@AutoService(Check.class)
public final class RefuseMisplacedSpare implements Check {

    public static final FindingId FITS_NO_DOOR = new FindingId("spare-actuator.fits-no-door");
    public static final FindingId CONTRADICTED = new FindingId("spare-actuator.contradicted");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Registers registers = cell.registers();
        List<Finding> findings = new ArrayList<>();
        for (SpareActuator spare : registers.spareActuators()) {
            for (Stated<String> door : spare.fits()) {
                if (cell.safeguards().stream().anyMatch(guarding -> isOther(guarding, door))) {
                    findings.add(Finding.refuses(
                            FITS_NO_DOOR,
                            spare.tag().characters(),
                            door.where(),
                            "the spare actuator `" + spare.tag().characters() + "` is said to fit `" + door.characters()
                                    + "`, which is no interlocked door",
                            "name the doors whose switches it works"));
                }
            }
        }
        if (registers.noSpares().value().isPresent()
                && !registers.spareActuators().isEmpty()
                && BarUnlistedSpare.unlisted(cell).isEmpty()) {
            findings.add(Finding.refuses(
                    CONTRADICTED,
                    "",
                    registers.noSpares().where(),
                    "`no-spares` says where the spare actuators went, and for each interlocked door some are listed (first at "
                            + registers.spareActuators().get(0).tag().where().position() + ")",
                    "go and look whether there are any, and delete what is not so"));
        }
        return findings;
    }

    private static boolean isOther(Guarding guarding, Stated<String> named) {
        return guarding.tag().equals(named.characters())
                && !guarding.safeguard().kind().hasActuator();
    }
}
