package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Another edition is in force, or a value of one was read or confirmed in a copy. */
@AutoService(KindOfChange.class)
public final class EditionChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("standards/.+" + "|copy-values/.+" + "|confirmations/.+");

    @Override
    public String id() {
        return "edition";
    }

    @Override
    public String title() {
        return "Edition of a standard";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(
                Proof.STOP_TIME,
                "statistic/number of runs",
                Proof.DISTANCE,
                "yes",
                Proof.INSTALLED,
                "compare",
                Proof.RISK,
                "review");
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
