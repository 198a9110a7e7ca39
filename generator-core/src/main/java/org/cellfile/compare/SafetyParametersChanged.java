package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** The configuration of a robot or a safeguard is another one, as its checksum tells. */
@AutoService(KindOfChange.class)
public final class SafetyParametersChanged implements KindOfChange {

    static final Pattern CONFIGURATION =
            Pattern.compile("configurations/[^/]+/(tag|of|device|what|shown-at|(tested|installed|posted)/value)");

    private static final Pattern STATED = Pattern.compile("robots/[^/]+/controller/checksum");

    @Override
    public String id() {
        return "safety-parameters";
    }

    @Override
    public String title() {
        return "Safety parameters";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "as affected",
                Proof.DISTANCE,
                "as affected",
                Proof.INSTALLED,
                "field size",
                Proof.FUNCTION_TESTS,
                "all affected",
                Proof.CHECKSUM,
                "new checksum",
                Proof.RISK,
                "yes",
                Proof.SHEET,
                "checksum line");
    }

    @Override
    public Tests tests() {
        return Tests.OF_ITS_STOPS;
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED) || (stating.like(CONFIGURATION) && stating.thingHas("of"));
    }
}
