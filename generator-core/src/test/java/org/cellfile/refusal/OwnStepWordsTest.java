package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** By which words a step of the plant's own is seen to go against the cell, language by language. All steps are constructed. */
class OwnStepWordsTest {

    @TempDir
    private Path folder;

    /** Language, whether it is seen, step. The mode allows 250 mm/s. */
    static Stream<Arguments> speeds() {
        return table("""
                en yes Drive at 0.5 metres per second.
                en no  Drive at 0.2 metres per second.
                en yes Drive at 0.5 meter a second.
                en yes Drive at 300 millimetres per second.
                en yes Drive at 30 cm/s.
                en no  Drive at 25 cm/s.
                en yes Drive at 16 metres per minute.
                en no  Drive at 15 metres per minute.
                en yes Drive at 1 km/h.
                en no  Drive at 0.9 km/h.
                en yes Drive at 10 inches per second.
                en no  Drive at 9 inches per second.
                en yes Drive at 1 foot per second.
                en yes Drive at 50 feet/minute.
                en no  Drive at 49 feet/minute.
                en yes Drive at 1,500 mm per s.
                en no  Accelerate with 5 m/s².
                en no  Wait 20 seconds, then go 5 metres back.
                en no  Take 12 metal parts per shift.
                de yes Mit 0,5 Metern pro Sekunde fahren.
                de no  Mit 0,2 Metern pro Sekunde fahren.
                de no  Mit 0.2 m/s fahren.
                de yes Mit 0.5 m/s fahren.
                de no  Mit 0,250 m/s fahren.
                de yes Mit 1.500 mm/s fahren.
                de yes Mit 300 Millimeter je Sekunde fahren.
                de yes Mit 20 Metern in der Minute fahren.
                de yes Mit 2 Kilometern pro Stunde fahren.
                es yes Ir a 0,5 metros por segundo.
                es no  Ir a 0,2 metros por segundo.
                es yes Ir a 300 milímetros por segundo.
                es yes Ir a 18 metros al minuto.
                es yes Ir a 12 pulgadas por segundo.
                pl yes Jedź z prędkością 0,5 metra na sekundę.
                pl no  Jedź z prędkością 0,2 metra na sekundę.
                pl yes Jedź z prędkością 300 milimetrów na sekundę.
                pl yes Jedź z prędkością 20 metrów na minutę.
                """);
    }

    /** The same of words that put a safeguard out of action. */
    static Stream<Arguments> defeating() {
        return table("""
                en yes Switch off the left scanner.
                en yes Switch the light curtain at the exit off.
                en yes Turn {curtain} off.
                en yes Disconnect the door switch.
                en yes Remove the fence.
                en yes Pull the actuator out.
                en no  Remove dust from the scanner.
                en no  Switch the lamp at the scanner on.
                en no  Never switch off the scanner.
                en no  Switch the vacuum off.
                en no  Turn {pendant} off.
                en no  See that the cover of the sensor is clean.
                de yes Schalten Sie den Scanner ab.
                de yes Schalten Sie den linken Laserscanner an der Westseite ab.
                de yes Schalte {curtain} aus.
                de yes Den Lichtvorhang abschalten.
                de yes Ziehen Sie den Betätiger heraus.
                de yes Ziehen Sie den Türkontakt ab.
                de yes Klemmen Sie den Zustimmtaster fest.
                de yes Kleben Sie den Sensor zu.
                de yes Decken Sie den Scanner mit der Haube ab.
                de yes Hängen Sie die Schutztür aus.
                de yes Nehmen Sie den Schutzzaun weg.
                de no  Schalten Sie den Scanner nicht ab.
                de no  Ziehen Sie den Schlüssel ab.
                de no  Ziehen Sie die Palette heraus.
                de no  Schalten Sie die Pumpe ab.
                de no  Nehmen Sie den Staub vom Scanner weg.
                de no  Decken Sie die Palette neben dem Scanner ab.
                de no  Kleben Sie den Karton zu.
                es yes Apagar la cortina de luz.
                es yes Desconectar el escáner.
                es yes Quitar la valla.
                es yes Apague {curtain}.
                es no  Quitar el polvo del escáner.
                es no  Apagar la aspiradora.
                es no  Nunca apagar la cortina de luz.
                pl yes Wyłącz lewy skaner.
                pl yes Odłącz czujnik drzwi.
                pl yes Zdejmij osłonę.
                pl yes Wyłącz {curtain}.
                pl no  Wyłącz lampę przy skanerze.
                pl no  Usuń kurz ze skanera.
                pl no  Nie wyłączaj kurtyny.
                """);
    }

    /** The same of words that set the cell going before one looked. */
    static Stream<Arguments> starting() {
        return table("""
                de yes Schalten Sie die Zelle ein.
                de yes Fahren Sie den Roboter wieder hoch.
                de no  Schalten Sie die Pumpe aus.
                en yes Press start.
                en no  Look at the lamp.
                """);
    }

    private static Stream<Arguments> table(String rows) {
        return Stream.of("en", "de", "es", "pl")
                .map(tag -> Arguments.of(
                        tag,
                        rows.lines()
                                .map(String::strip)
                                .filter(row -> row.startsWith(tag + " "))
                                .map(row -> row.substring(3))
                                .toList()))
                .filter(arguments -> !((List<?>) arguments.get()[1]).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("speeds")
    void speedsAreSeenInWordsAndSymbols(String tag, List<String> rows) throws IOException {
        assertThat(seen(tag, "manual-reduced-speed", "part: change", rows, "this step speaks of"))
                .isEqualTo(meant(rows));
    }

    @ParameterizedTest
    @MethodSource("defeating")
    void defeatingIsSeenInWordsThatStandApart(String tag, List<String> rows) throws IOException {
        assertThat(seen(tag, "after-stop", "part: clear", rows, "puts a safeguard out of action"))
                .isEqualTo(meant(rows));
    }

    @ParameterizedTest
    @MethodSource("starting")
    void startingIsSeenInWordsThatStandApart(String tag, List<String> rows) throws IOException {
        assertThat(seen(tag, "automatic-operation", "part: start, before: nobody", rows, "sets the cell going"))
                .isEqualTo(meant(rows));
    }

    private static List<String> meant(List<String> rows) {
        return rows.stream().filter(row -> row.startsWith("yes ")).toList();
    }

    /** Those rows at which something is found that says that. */
    private List<String> seen(String tag, String sheet, String place, List<String> rows, String words)
            throws IOException {
        BaseCell.copyTo(folder);
        List<String> lines = new ArrayList<>(
                List.of("cellfile: 1", "sheets:", "  responsible: ilse", "  language: " + tag, "  own-steps:"));
        int first = lines.size() + 1;
        rows.forEach(row -> lines.add(
                String.format(Locale.ROOT, "    - {sheet: %s, %s, do: \"%s\"}", sheet, place, row.substring(4))));
        Files.write(folder.resolve("sheets.yaml"), lines);
        List<Finding> found = BaseCell.check(folder).findings().stream()
                .filter(finding -> finding.id().words().equals("sheet.step-contradicts"))
                .filter(finding -> finding.sentence().contains(words))
                .toList();
        return IntStream.range(0, rows.size())
                .filter(row -> found.stream().anyMatch(one -> one.where().line() == first + row))
                .mapToObj(rows::get)
                .toList();
    }
}
