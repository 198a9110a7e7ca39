package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** A machine or a part that brings it to rest was exchanged. */
@AutoService(KindOfChange.class)
public final class DriveExchanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("robots/[^/]+/(tag|serial|name|reach)"
            + "|robots/[^/]+/controller/(name|serial|software)"
            + "|parts/[^/]+/(?!name$|stated/).+"
            + "|stop-tests/[^/]+/(brake-monitor|wear-allowance/.+)");

    @Override
    public String id() {
        return "drive";
    }

    @Override
    public String title() {
        return "Brake, motor, gearbox or controller exchanged";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME, "yes", Proof.DISTANCE, "yes", Proof.FUNCTION_TESTS, "stops", Proof.CHECKSUM, "yes");
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
