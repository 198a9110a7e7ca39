package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Another tool: it weighs, reaches and swings otherwise. */
@AutoService(KindOfChange.class)
public final class ToolChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("robots/[^/]+/tool/.+");

    @Override
    public String id() {
        return "tool";
    }

    @Override
    public String title() {
        return "Tool (mass, length)";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "yes",
                Proof.DISTANCE,
                "yes",
                Proof.INSTALLED,
                "yes (reach)",
                Proof.FUNCTION_TESTS,
                "affected stops",
                Proof.CHECKSUM,
                "tool data",
                Proof.RISK,
                "yes",
                Proof.SHEET,
                "if hazard/reach changes");
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
