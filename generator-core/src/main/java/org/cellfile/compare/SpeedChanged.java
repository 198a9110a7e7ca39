package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** The machine may move faster or slower. */
@AutoService(KindOfChange.class)
public final class SpeedChanged implements KindOfChange {

    private static final Pattern STATED =
            Pattern.compile("robots/[^/]+/speeds/.+" + "|modes/[^/]+/speed-limit" + "|stop-tests/[^/]+/used-at/speed");

    @Override
    public String id() {
        return "speed";
    }

    @Override
    public String title() {
        return "Highest speed or acceleration";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "yes",
                Proof.DISTANCE,
                "yes",
                Proof.FUNCTION_TESTS,
                "affected",
                Proof.CHECKSUM,
                "yes if limit",
                Proof.RISK,
                "review",
                Proof.SHEET,
                "if text states speed");
    }

    @Override
    public Tests tests() {
        return Tests.OF_ITS_STOPS;
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
