package org.cellfile.render;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.time.temporal.Temporal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Trigger;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.dossier.Dossier;
import org.cellfile.render.calendar.DueCalendar;
import org.cellfile.verdict.Printable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar of what falls due, as a library reads it that had no part in writing it. */
class DueCalendarTest {

    private static Calendar read(Printable printable) {
        try {
            return new CalendarBuilder().build(new ByteArrayInputStream(DueCalendar.bytes(printable)));
        } catch (java.io.IOException | ParserException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static Printable example(String name) {
        return (Printable) new Generator()
                .check(FolderWorld.of(Path.of("..", "examples", name, "src", "main", "cell")))
                .verdict();
    }

    private static List<VEvent> events(Calendar calendar) {
        return calendar.getComponents().stream().map(VEvent.class::cast).toList();
    }

    private static Property only(List<Property> properties, String name) {
        List<Property> named = properties.stream()
                .filter(property -> property.getName().equals(name))
                .toList();
        assertThat(named).as(name).hasSize(1);
        return named.get(0);
    }

    private static String text(List<Property> properties, String name) {
        return only(properties, name).getValue();
    }

    private static <P extends Property> P property(Component component, String name, Class<P> sort) {
        return sort.cast(only(component.getProperties(), name));
    }

    private static Temporal start(Component event) {
        return property(event, "DTSTART", DtStart.class).getDate();
    }

    private static Instant stamp(Component event) {
        return property(event, "DTSTAMP", DtStamp.class).getDate();
    }

    private static String text(Component component, String name) {
        return text(component.getProperties(), name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"kettlebrook-palletising", "marrowdale-refit", "stonewick-tending"})
    void everyFieldComesBack(String name) {
        Printable printable = example(name);
        Dossier dossier = printable.dossier();
        Calendar calendar = read(printable);

        calendar.validate();
        assertThat(text(calendar.getProperties(), "NAME"))
                .isEqualTo("Due dates of " + dossier.label().cellName() + ", revision "
                        + dossier.label().revision() + (printable.draft() ? ", draft" : ""));
        assertThat(text(calendar.getProperties(), "DESCRIPTION"))
                .contains(dossier.label().site(), dossier.label().asOf());
        List<VEvent> events = events(calendar);
        assertThat(events).hasSameSizeAs(dossier.due()).isNotEmpty();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < events.size(); i++) {
            holds(events.get(i), dossier.due().get(i), dossier);
            names.add(text(events.get(i), "UID"));
        }
        assertThat(names).hasSameSizeAs(events);
    }

    private static void holds(VEvent event, Dossier.Due due, Dossier dossier) {
        LocalDate on = LocalDate.parse(due.on());
        assertThat(start(event)).isEqualTo(on);
        assertThat(stamp(event)).isEqualTo(Instant.parse(dossier.label().asOf() + "T00:00:00Z"));
        assertThat(text(event, "SUMMARY")).isEqualTo(dossier.label().cellName() + ", " + due.tag() + ": " + due.what());
        assertThat(text(event, "DESCRIPTION"))
                .isEqualTo(
                        "Source: " + due.source() + "\nCell: " + dossier.label().cellName() + ", revision "
                                + dossier.label().revision() + ", as of "
                                + dossier.label().asOf());
        assertThat(text(event, "LOCATION")).isEqualTo(dossier.label().site());
        assertThat(text(event, "CATEGORIES")).isEqualTo(dossier.label().cellId());
        assertThat(text(event, "TRANSP")).isEqualTo("TRANSPARENT");
        assertThat(text(event, "UID")).startsWith(dossier.label().cellId() + "-" + due.tag() + "-");
        assertThat(event.getComponentList().getAll()).singleElement().satisfies(alarm -> {
            assertThat(text(alarm, "DESCRIPTION")).isEqualTo(text(event, "SUMMARY"));
            Period ahead = Period.from(property(alarm, "TRIGGER", Trigger.class).getDuration());
            assertThat(on.plus(ahead)).isEqualTo(LocalDate.parse(due.ahead()));
            assertThat(ChronoUnit.DAYS.between(LocalDate.parse(due.ahead()), on))
                    .isPositive();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mend\nEND:VEVENT\nBEGIN:VEVENT\nUID:forged\nSUMMARY:forged\n",
                "mend\r\nEND:VCALENDAR\r\n",
                "mend\rATTACH:forged",
                "mend\\nEND:VEVENT",
                "mend; VALUE=DATE: 20990101, and \"quoted\" \\; \\, \\\\",
                ";,:\\",
                "größer 日本 \uD83E\uDD16 ligne",
            })
    void whatIsWrittenInATextStaysText(String hostile) {
        // The full stop: this reader takes a backslash at the very end of a line for a part of the line break.
        Printable printable = new ExampleDossier()
                .with(new Dossier.Due("2025-05-01", "2025-04-01", "door-west", hostile, hostile + "."))
                .printable();

        List<VEvent> events = events(read(printable));
        assertThat(events).hasSize(2);
        VEvent event = events.get(1);
        String lines = hostile.replaceAll("\r\n|\r", "\n");
        assertThat(text(event, "SUMMARY")).isEqualTo("Palletising cell North 3, door-west: " + lines);
        assertThat(text(event, "DESCRIPTION")).startsWith("Source: " + lines + ".\nCell: ");
        List<Property> properties = event.getProperties();
        assertThat(properties)
                .extracting(Property::getName)
                .containsExactlyInAnyOrder(
                        "UID", "DTSTAMP", "DTSTART", "TRANSP", "SUMMARY", "DESCRIPTION", "LOCATION", "CATEGORIES");
    }

    @Test
    void noLineIsLongerThan75OctetsAndEachEndsInCrlf() {
        for (String filler : List.of("x", "ü", "日", "\uD83E\uDD16", "x日ü")) {
            for (int length = 1; length < 90; length++) {
                byte[] bytes = DueCalendar.bytes(new ExampleDossier()
                        .with(new Dossier.Due(
                                "2025-05-01", "2025-04-01", "door", filler.repeat(length), "y".repeat(length)))
                        .printable());
                String text = new String(bytes, UTF_8);
                assertThat(text).endsWith("END:VCALENDAR\r\n").doesNotContain("\uFFFD");
                for (String line : text.split("\r\n", -1)) {
                    assertThat(line.getBytes(UTF_8).length).as(line).isLessThanOrEqualTo(75);
                    assertThat(line).doesNotContain("\r", "\n").doesNotContain("\uFFFD");
                }
                assertThat(text.replace("\r\n ", "")).contains("door: " + filler.repeat(length) + "\r\n");
            }
        }
    }

    @Test
    void whereAndWhenItIsWrittenChangesNothing() {
        Printable printable = new ExampleDossier()
                .with(new Dossier.Due("2018-11-04", "2018-10-04", "door", "a day without midnight in Brazil", "test"))
                .printable();
        byte[] before = DueCalendar.bytes(printable);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String place :
                    List.of("America/Sao_Paulo", "Pacific/Kiritimati", "Pacific/Midway", "Asia/Kathmandu")) {
                Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
                TimeZone.setDefault(TimeZone.getTimeZone(place));
                assertThat(DueCalendar.bytes(printable)).as(place).isEqualTo(before);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertThat(start(events(read(printable)).get(1))).isEqualTo(LocalDate.of(2018, 11, 4));
        assertThat(stamp(events(read(printable)).get(1)).atZone(ZoneOffset.UTC).toLocalDate())
                .isEqualTo(LocalDate.of(2025, 3, 14));
    }

    /** A due date that moves is the same entry at another day; another thing to do is another entry. */
    @Test
    void anEntryKeepsItsName() {
        List<VEvent> events = events(read(new ExampleDossier()
                .with(new Dossier.Due(
                        "2025-05-01", "2025-04-01", "tape", "calibrate again: steel tape", "certificate 18"))
                .with(new Dossier.Due("2025-05-01", "2025-04-01", "tape", "give it back", "certificate 18"))
                .printable()));

        assertThat(text(events.get(1), "UID")).isEqualTo(text(events.get(0), "UID"));
        assertThat(text(events.get(2), "UID")).isNotEqualTo(text(events.get(0), "UID"));
    }

    @Test
    void itSaysWhenItIsADraftAndWhatBarsRelease() {
        List<Property> draft = read(new ExampleDossier().printable()).getProperties();
        assertThat(text(draft, "NAME")).endsWith(", draft");
        assertThat(text(draft, "DESCRIPTION"))
                .contains(
                        "This revision is a draft. 9 things bar release: the function test of `door-west` no. 1 was due")
                .endsWith("and no later result is recorded.");
        assertThat(text(read(new ExampleDossier().releasable().printable()).getProperties(), "DESCRIPTION"))
                .endsWith("This revision is a draft. Nothing bars a release, and none was asked for.");
        List<Property> released =
                read(new ExampleDossier().released("").printable()).getProperties();
        assertThat(text(released, "NAME")).endsWith("revision C");
        assertThat(text(released, "DESCRIPTION")).doesNotContain("draft");
    }
}
