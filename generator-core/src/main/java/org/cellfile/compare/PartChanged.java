package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Another part is handled, or the robot may carry another load. */
@AutoService(KindOfChange.class)
public final class PartChanged implements KindOfChange {

    private static final Pattern STATED =
            Pattern.compile("robots/[^/]+/part/.+" + "|robots/[^/]+/payload" + "|stop-tests/[^/]+/used-at/load");

    @Override
    public String id() {
        return "part";
    }

    @Override
    public String title() {
        return "Payload or part";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "yes if above measured",
                Proof.DISTANCE,
                "yes",
                Proof.CHECKSUM,
                "payload data",
                Proof.RISK,
                "review");
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
