package org.cellfile.render.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateStart;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Words;
import org.cellfile.finding.Finding;
import org.cellfile.verdict.Printable;

/**
 * What falls due, as a file for calendar programs (iCalendar, RFC 5545; name and description of the whole, RFC 7986): one
 * all-day event for each, with an alarm as long before as the cell states. The only time in it is the day the description speaks
 * of, so that the same description gives the same bytes, and an entry keeps its name from one revision to the next.
 */
public final class DueCalendar {

    private static final String MAKER = "-//Cellfile//Due dates//EN";

    /** So many digits of a digest tell the entries of one thing apart. */
    private static final int DIGITS = 16;

    private final Words words = Words.of("calendar");
    private final Label label;
    private final ICalendar calendar = new ICalendar();

    private DueCalendar(Printable printable) {
        this.label = printable.dossier().label();
        String draft = printable.draft() ? "-draft" : "";
        calendar.setProductId(MAKER);
        calendar.setName(words.get("name" + draft, label.cellName(), label.revision()));
        calendar.setDescription(
                words.get("about" + draft, label.cellName(), label.site(), label.asOf(), missing(printable)));
        printable.dossier().due().forEach(due -> calendar.addEvent(event(due)));
    }

    /** What bars release, as a sentence without a full stop. */
    private String missing(Printable printable) {
        List<String> missing =
                printable.missing().stream().map(Finding::sentence).toList();
        return switch (missing.size()) {
            case 0 -> words.get("missing.none");
            case 1 -> words.get("missing.one", missing.get(0));
            default -> words.get("missing.many", String.valueOf(missing.size()), String.join("; ", missing));
        };
    }

    /** The bytes of the file. */
    public static byte[] bytes(Printable printable) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            // The library folds by characters, RFC 5545 by octets.
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(new DueCalendar(printable).calendar);
        } catch (IOException notInMemory) {
            throw new UncheckedIOException(notInMemory);
        }
        return Folded.bytes(text.toString());
    }

    private VEvent event(Dossier.Due due) {
        LocalDate on = LocalDate.parse(due.on());
        String summary = words.get("summary", label.cellName(), due.tag(), due.what());
        VEvent event = new VEvent();
        event.setUid(label.cellId() + "-" + due.tag() + "-"
                + Digest.sha256(due.what()).substring(0, DIGITS));
        event.setDateTimeStamp(midnight(LocalDate.parse(label.asOf())));
        event.setDateStart(new DateStart(day(on)));
        event.setTransparency(true);
        event.setSummary(summary);
        event.setDescription(words.get("source", due.source()) + "\n"
                + words.get("cell", label.cellName(), label.revision(), label.asOf()));
        event.setLocation(label.site());
        event.addCategories(label.cellId());
        event.addAlarm(VAlarm.display(new Trigger(ahead(due, on), Related.START), summary));
        return event;
    }

    private static Duration ahead(Dossier.Due due, LocalDate on) {
        return Duration.builder()
                .prior(true)
                .days(Math.toIntExact(ChronoUnit.DAYS.between(LocalDate.parse(due.ahead()), on)))
                .build();
    }

    private static ICalDate day(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }

    private static ICalDate midnight(LocalDate day) {
        return new ICalDate(
                new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth(), 0, 0, 0, true), true);
    }
}
