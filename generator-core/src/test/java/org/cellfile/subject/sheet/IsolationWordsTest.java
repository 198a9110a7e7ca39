package org.cellfile.subject.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cellfile.finding.Findings;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By which words each language knows what a step of isolating energies does. The sentences are constructed. */
class IsolationWordsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | unlocking | Take off all locks.",
                "en | locking | Hang your lock on the handle.",
                "en | energising | Turn the power on.",
                "en | stopping | Press the stop button.",
                "en | isolating | Turn the main switch to 0.",
                "en | releasing | Drain the pipe.",
                "en | verifying | Measure 0 V.",
                "de | unlocking | Alle Schlösser abnehmen.",
                "de | locking | Das eigene Schloss am Griff einhängen.",
                "de | energising | Die Energie zuschalten.",
                "de | stopping | Zelle anhalten.",
                "de | isolating | Hauptschalter auf 0 drehen.",
                "de | releasing | Die Leitung entlüften.",
                "de | verifying | An Klemme X1 messen: 0 V.",
                "es | unlocking | Quitar todos los candados.",
                "es | locking | Colocar el candado en la maneta.",
                "es | energising | Volver a dar tensión.",
                "es | stopping | Parar la célula.",
                "es | isolating | Girar el interruptor general a 0.",
                "es | releasing | Purgar el tubo.",
                "es | verifying | Medir 0 V.",
                "pl | unlocking | Zdejmij wszystkie kłódki.",
                "pl | locking | Załóż kłódkę na uchwyt.",
                "pl | energising | Włącz zasilanie.",
                "pl | stopping | Zatrzymaj gniazdo.",
                "pl | isolating | Przekręć wyłącznik główny na 0.",
                "pl | releasing | Odpowietrz przewód.",
                "pl | verifying | Zmierz 0 V."
            })
    void aStepIsKnownByTheWordsOfItsLanguage(String tag, String key, String sentence) {
        assertThat(IsolationWords.said(sentence, key, wording(tag))).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | unlocking | Take off the cover.",
                "en | unlocking | Never take off the lock of another.",
                "en | locking | Put the cover on.",
                "en | verifying | Wait 5 minutes.",
                "de | unlocking | Den Deckel abnehmen.",
                "de | unlocking | Niemals ein fremdes Schloss abnehmen.",
                "de | verifying | Das Messer ausbauen.",
                "es | unlocking | Quitar la tapa.",
                "pl | unlocking | Zdejmij pokrywę."
            })
    void andNotByWordsThatOnlyLookLikeThem(String tag, String key, String sentence) {
        assertThat(IsolationWords.said(sentence, key, wording(tag))).isEmpty();
    }

    private static Wording wording(String tag) {
        return new Wording(
                EnergyIsolation.ID,
                Language.of(tag, List.of()).orElseThrow(),
                new Translations(tag, List.of(), new Findings()));
    }
}
