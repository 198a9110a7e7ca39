package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Another safeguard, or one with other properties. */
@AutoService(KindOfChange.class)
public final class SafeguardReplaced implements KindOfChange {

    private static final Pattern STATED = Pattern.compile(
            "safeguards/[^/]+/(?!name$|stated/|installed/|position$|protects$|lower-edge$|upper-edge$|field-height$|height$|gap-below$|width$|step$|beams$|turn$|behind/|openings/|ends/|inclination/).+"
                    + "|complementary/[^/]+/(?!name$|position$|mounted$|height$|reach$|longest-reach/|place$|sees$|reachable-from-inside$).+");

    @Override
    public String id() {
        return "safeguard";
    }

    @Override
    public String title() {
        return "Safeguard or device replaced";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.DISTANCE,
                "yes",
                Proof.INSTALLED,
                "yes",
                Proof.FUNCTION_TESTS,
                "that device",
                Proof.CHECKSUM,
                "yes",
                Proof.SHEET,
                "rod diameter");
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
