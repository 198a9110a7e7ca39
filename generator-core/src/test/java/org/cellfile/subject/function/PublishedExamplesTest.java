package org.cellfile.subject.function;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of published sources, from what a file states to the derived values. A published figure that the source rounded to
 * the nearest digit is met to half of that digit; where the program rounds another way, its own figure stands beside it.
 *
 * <p>Some sources are examples of arithmetic only: their way to the frequency of dangerous failure is a shortcut of that maker and no
 * method of this program. Of these only operations, mean times and sums are compared.
 */
class PublishedExamplesTest {

    /** A file with one part. */
    private static AsDescribed part(String keys) {
        return AsDescribed.read(
                "parts:\n  - {tag: part, name: Part, source: data sheet, installed: 2026-01-01, " + keys + "}\n");
    }

    private static String worn(String b10d, int days, int hours, String cycle) {
        return "b10d: " + b10d + ", operations: {days: " + days + ", hours: " + hours + " h, cycle: " + cycle + "}";
    }

    /** The exact value lies within half of the last digit of the published one. */
    private static void published(AsDescribed file, String tag, String published, Unit unit) {
        Quantity exact = file.derived(tag).value().orElseThrow().in(unit);
        BigDecimal printed = new BigDecimal(published);
        assertThat(exact.number())
                .as(tag)
                .isCloseTo(printed, within(printed.ulp().divide(BigDecimal.valueOf(2))));
    }

    /**
     * Thermostat, one operation in an hour. JUMO, safety manuals heatTHERM-AT and exTHERM. The source does not limit its channel; with
     * the limit of 100 years and the table the channel is one of 100 years and of 1.14e-6 1/h.
     */
    @Test
    void thermostat() {
        AsDescribed file = AsDescribed.read("""
                parts:
                  - tag: thermostat
                    name: Thermostat
                    source: safety manual
                    b10d: 250000
                    operations: {days: 220, hours: 24 h, cycle: 1 h}
                    well-tried: proved in use
                    installed: 2026-01-01
                subsystems:
                  - tag: heating
                    name: Limiter of the heating
                    category: 1
                    channels:
                      - {name: A, parts: [thermostat]}
                """);
        published(file, "thermostat.operations", "5280", Unit.PER_YEAR);
        published(file, "thermostat.mttfd", "473.48", Unit.YEAR);
        published(file, "thermostat.t10d", "47.35", Unit.YEAR);
        assertThat(file.printed("thermostat.mttfd")).isEqualTo("473.48 years");
        assertThat(file.printed("thermostat.t10d")).as("down").isEqualTo("47.34 years");
        // The same source has 241.1 failures in 1e9 h for architecture A of IEC 62061: the part itself, by whichever
        // way.
        Quantity rate = Quantity.count(1)
                .per(file.derived("thermostat.mttfd").value().orElseThrow())
                .in(Unit.PER_HOUR);
        assertThat(rate.number()).isCloseTo(new BigDecimal("2.411e-7"), within(new BigDecimal("0.0005e-7")));
        assertThat(file.printed("heating.channel-1")).isEqualTo("100.00 years");
        assertThat(file.printed("heating.pfh")).isEqualTo("1.14e-6 1/h");
        assertThat(file.printed("heating.level")).isEqualTo("PL c");
    }

    /** Relay of which half of the failures are dangerous, limited to 100 years. LinMot, C1100 installation guide, p. 18. */
    @Test
    void relay() {
        AsDescribed file = AsDescribed.read("""
                parts:
                  - tag: relay
                    name: Relay
                    source: installation guide
                    b10: 10000000
                    operations: {days: 365.25, hours: 24 h, cycle: 20 s}
                    coverage: {share: 99 %, by: [logic], how: read back}
                    installed: 2026-01-01
                subsystems:
                  - tag: relays
                    name: Relays
                    category: 3
                    channels:
                      - {name: A, parts: [relay]}
                """);
        published(file, "relay.b10d", "20000000", Unit.ONE);
        published(file, "relay.operations", "1577880", Unit.PER_YEAR);
        published(file, "relay.mttfd", "126.75", Unit.YEAR);
        assertThat(file.printed("relays.channel-1")).isEqualTo("100.00 years");
        assertThat(file.printed("relays.coverage")).isEqualTo("99.00 %");
    }

    /**
     * Emergency stop device, a fifth of the failures dangerous, actuated once in a day. Siemens SINAMICS DCM, functional safety, 2016,
     * p. 56 and 59; read as two channels alike.
     */
    @Test
    void emergencyStop() {
        String contact = "name: Contact, source: manual, b10: 100000, dangerous: 20 %,"
                + " operations: {days: 365, hours: 24 h, cycle: 24 h},"
                + " coverage: {share: 99 %, by: [logic], how: compared}, installed: 2026-01-01}\n";
        AsDescribed file = AsDescribed.read("parts:\n  - {tag: one, " + contact + "  - {tag: other, " + contact + """
                subsystems:
                  - tag: stop
                    name: Emergency stop device
                    category: 4
                    channels:
                      - {name: A, parts: [one]}
                      - {name: B, parts: [other]}
                """);
        published(file, "one.b10d", "500000", Unit.ONE);
        published(file, "one.operations", "365", Unit.PER_YEAR);
        published(file, "one.mttfd", "13698.63", Unit.YEAR);
        assertThat(file.printed("stop.channel-1")).isEqualTo("2500.00 years");
        assertThat(file.printed("stop.mttfd")).isEqualTo("2500.00 years");
        assertThat(file.printed("stop.pfh")).isEqualTo("9.06e-10 1/h");
        assertThat(file.printed("stop.level")).isEqualTo("PL e");
    }

    /**
     * Operations and mean times of parts that wear. Arithmetic only: Beckhoff, application guide for the calculation of safety
     * parameters, p. 50 and 51 (protective door), p. 81 (laser scanner; recalculated), p. 128 (door of four drives). ROSS Controls,
     * MTTF_D and diagnostic coverage example (valve; recalculated).
     */
    @ParameterizedTest
    @CsvSource({
        "switch S1 of p. 50, 1000000, 230, 16, 15 min, 14720, 679.3",
        "switch S2 of p. 50, 2000000, 230, 16, 15 min, 14720, 1358.7",
        "contactor of p. 51, 1300000, 230, 16, 15 min, 14720, 883.2",
        "contactor of p. 81, 1300000, 230, 16, 10 min, 22080, 588.8",
        "switch S1 of p. 128, 1000000, 230, 8, 60 min, 1840, 5434.8",
        "switch S2 of p. 128, 2000000, 230, 8, 60 min, 1840, 10869.6",
        "valve, 20000000, 360, 16, 30 s, 691200, 289.35"
    })
    void ofWear(String what, String b10d, int days, int hours, String cycle, String operations, String mttfd) {
        AsDescribed file = part(worn(b10d, days, hours, cycle));
        published(file, "part.operations", operations, Unit.PER_YEAR);
        published(file, "part.mttfd", mttfd, Unit.YEAR);
        assertThat(part("b10d: " + b10d + ", operations: {days: " + days + ", per-day: "
                                + new BigDecimal(operations).divide(BigDecimal.valueOf(days)) + "}")
                        .derived("part.mttfd")
                        .value())
                .as("counted in a day")
                .isEqualTo(file.derived("part.mttfd").value());
    }

    /**
     * Sums of subsystems whose figures are given. Arithmetic only: Beckhoff, application guide, p. 81 (scanner, the terminals of p. 78,
     * and the contactors by the shortcut of that guide; recalculated), p. 128 (two switches by the shortcut, input, logic, four drives)
     * and p. 78 (six terms; two of them a tenth by the shortcut).
     */
    @ParameterizedTest
    @CsvSource({
        "p. 81, 7.67e-8 1.11e-9 1.03e-9 1.25e-9 1.94e-10, 8.03e-8, 8.03e-8",
        "p. 128, 1.575e-11 1.11e-9 1.03e-9 5.15e-9 5.15e-9 5.15e-9 5.15e-9, 2.28e-8, 2.28e-8",
        "p. 78, 1.26e-10 1.11e-9 1.03e-9 1.25e-9 1.93e-9 1.11e-9, 6.56e-9, 6.56e-9"
    })
    void sums(String page, String terms, String published, String printed) {
        StringBuilder subsystems = new StringBuilder("subsystems:\n");
        StringBuilder chain = new StringBuilder();
        String[] each = terms.split(" ", -1);
        for (int i = 0; i < each.length; i++) {
            subsystems
                    .append("  - {tag: sub-" + i + ", name: Subsystem, category: 3, maker: {pfh: " + each[i])
                    .append(" 1/h, level: PL e, source: guide, installed: 2026-01-01}}\n");
            chain.append("      - {subsystem: sub-" + i + ", place: logic}\n");
        }
        AsDescribed file = AsDescribed.read(subsystems + """
                functions:
                  - tag: stop
                    name: Stop
                    triggered-by: [door]
                    trigger: the door opens
                    reaction: stop
                    modes: [automatic]
                    chain:
                """ + chain);
        published(file, "stop.pfh", published, Unit.PER_HOUR);
        assertThat(file.printed("stop.pfh")).as(page).isEqualTo(printed + " 1/h");
    }

    /**
     * A device known by its frequency alone: (1 - DC) / PFH with 99 %. Arithmetic only: Beckhoff, application guide, p. 78. The source
     * rounds 8760 times the frequency to three digits first and prints 1028.8 and 1108.6; exact are 1028.43 and 1108.30, and 913.24 for
     * the third, which it uses without printing it.
     */
    @ParameterizedTest
    @CsvSource({"1.11e-9, 1028.43, 1028.8", "1.03e-9, 1108.30, 1108.6", "1.25e-9, 913.24, 913.2"})
    void byFrequency(String pfh, String exact, String source) {
        BigDecimal rate = new BigDecimal(pfh).multiply(BigDecimal.valueOf(100));
        AsDescribed file = part("dangerous-failure-rate: " + rate.toString().replace("E", "e") + " 1/h");
        published(file, "part.mttfd", exact, Unit.YEAR);
        assertThat(file.derived("part.mttfd")
                        .value()
                        .orElseThrow()
                        .in(Unit.YEAR)
                        .number())
                .isCloseTo(new BigDecimal(source), within(new BigDecimal("0.4")));
    }

    /** Sensor of which nothing but the mean time between failures is known. ReeR, safety guide, MTTF_D value. */
    @Test
    void sensor() {
        assertThat(part("mttf: 54 years").printed("part.mttfd")).isEqualTo("108.00 years");
    }

    /**
     * From operations until a tenth has failed to those until a tenth has failed dangerously. By 20 % and 73 %: Siemens SINAMICS DCM,
     * functional safety, 2016, p. 48 and 59 (5 times, 1.37 times). By half, where nobody knows: LinMot, C1100 installation guide, p. 18.
     */
    @ParameterizedTest
    @CsvSource({"100000, 20 %, 500000", "1000000, 73 %, 1369863", "1000000, , 2000000", "10000000, 50 %, 20000000"})
    void dangerousShare(String b10, String share, String b10d) {
        AsDescribed file = part("b10: " + b10 + (share == null ? "" : ", dangerous: " + share)
                + ", operations: {days: 365, hours: 24 h, cycle: 24 h}");
        assertThat(file.printed("part.b10d")).isEqualTo(b10d);
    }

    /** Rates of failure; constructed, as F-W6 in the notation of IEC 62061: four operations in an hour, a fifth dangerous. */
    @Test
    void rates() {
        AsDescribed wear = part("b10: 1000000, dangerous: 20 %, operations: {days: 365, hours: 24 h, cycle: 15 min}");
        assertThat(Quantity.count(1)
                        .per(wear.derived("part.mttfd").value().orElseThrow())
                        .in(Unit.PER_HOUR))
                .isEqualTo(Quantity.perHour("8.0e-8"));
        for (String same : new String[] {
            "dangerous-failure-rate: 8.0e-8 1/h", "failure-rate: 16e-8 1/h", "failure-rate: 4e-7 1/h, dangerous: 20 %"
        }) {
            assertThat(part(same).derived("part.mttfd").value())
                    .isEqualTo(wear.derived("part.mttfd").value());
        }
    }

    /**
     * The mean times to dangerous failure of two channels, as two that are alike; with the numbers of the contactor and the switch
     * above. Constructed; the formula is published: Schmersal, installation manual PSC1-C-10, p. 147 and 178; BBH, SMX100, p. 248.
     */
    @Test
    void symmetrised() {
        AsDescribed file = AsDescribed.read("""
                parts:
                  - {tag: one, name: One, source: data sheet, mttfd: 30 years, installed: 2026-01-01}
                  - {tag: other, name: Other, source: data sheet, mttfd: 60 years, installed: 2026-01-01}
                subsystems:
                  - tag: both
                    name: Both
                    category: 3
                    channels:
                      - {name: A, parts: [one]}
                      - {name: B, parts: [other]}
                """);
        // 2/3 (90 - 20)
        assertThat(file.printed("both.mttfd")).isEqualTo("46.66 years");
        assertThat(file.printed("both.pfh")).as("no coverage").isEqualTo("withheld");
    }
}
