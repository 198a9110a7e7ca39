package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** The robot takes another way within what was measured: how far it reaches out. */
@AutoService(KindOfChange.class)
public final class ProgramChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("stop-tests/[^/]+/used-at/extension");

    @Override
    public String id() {
        return "program";
    }

    @Override
    public String title() {
        return "Path or program within limits";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "if worst point moves",
                Proof.DISTANCE,
                "if",
                Proof.FUNCTION_TESTS,
                "manual reduced speed test",
                Proof.CHECKSUM,
                "program id",
                Proof.RISK,
                "review");
    }

    @Override
    public Tests tests() {
        return Tests.OF_THE_THING;
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
