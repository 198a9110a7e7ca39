package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** The cell stands elsewhere, or somebody else runs it. */
@AutoService(KindOfChange.class)
public final class PlaceChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("cell/(site|operator)");

    @Override
    public String id() {
        return "place";
    }

    @Override
    public String title() {
        return "Moved to another place or country";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "yes",
                Proof.DISTANCE,
                "yes",
                Proof.INSTALLED,
                "yes",
                Proof.FUNCTION_TESTS,
                "all",
                Proof.RISK,
                "yes",
                Proof.SHEET,
                "language");
    }

    @Override
    public Tests tests() {
        return Tests.ALL;
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
