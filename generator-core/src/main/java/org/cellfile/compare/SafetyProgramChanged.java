package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** What the safety control system does is another thing: its program, its functions, what they go through. */
@AutoService(KindOfChange.class)
public final class SafetyProgramChanged implements KindOfChange {

    private static final Pattern STATED =
            Pattern.compile("functions/[^/]+/(?!name$|stated/).+" + "|subsystems/[^/]+/(?!name$|stated/).+");

    @Override
    public String id() {
        return "safety-program";
    }

    @Override
    public String title() {
        return "Safety controller program";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.DISTANCE,
                "response time",
                Proof.FUNCTION_TESTS,
                "by impact analysis",
                Proof.CHECKSUM,
                "new signature",
                Proof.RISK,
                "review");
    }

    @Override
    public Tests tests() {
        return Tests.OF_THE_THING;
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED) || (stating.like(SafetyParametersChanged.CONFIGURATION) && !stating.thingHas("of"));
    }
}
