package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Another safeguard, or one with other properties; where it stands is a matter of {@link LayoutChanged}. */
@AutoService(KindOfChange.class)
public final class SafeguardReplaced implements KindOfChange {

    /** Whatever is stated of one, but for its name and what somebody recorded or measured. */
    private static final Pattern STATED =
            Pattern.compile("(safeguards|complementary)/[^/]+/(?!name$|stated/|installed/).+");

    private static final KindOfChange LAYOUT = new LayoutChanged();

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
        return stating.like(STATED) && !LAYOUT.covers(stating);
    }
}
