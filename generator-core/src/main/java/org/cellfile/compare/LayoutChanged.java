package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** Something stands elsewhere or is of another size: safeguards, zones, clearances, devices beside them; or is drawn so. */
@AutoService(KindOfChange.class)
public final class LayoutChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile(
            "safeguards/[^/]+/(position|protects|installed/(distance|uncertainty|from|to))"
                    + "|safeguards/[^/]+/(lower-edge|upper-edge|field-height|height|gap-below|width|step|beams|turn)"
                    + "|safeguards/[^/]+/(behind|openings|ends|inclination)(/.+)?"
                    + "|zones/[^/]+/(tag|hazard|robot|extent|overrun|stopped-by|heights/.+|limitation/.+)"
                    + "|clearances/[^/]+/(tag|zone|between|and|body-part|gap|uncertainty|measure)"
                    + "|plan/(unit|tolerance|uncertainty)"
                    + "|plan/(zones|robots|structures|safeguards|devices|places|ways-out)/(?!.*/stated/).+"
                    + "|complementary/[^/]+/(position|mounted|height|reach|longest-reach/.+|place|sees|reachable-from-inside)");

    @Override
    public String id() {
        return "layout";
    }

    @Override
    public String title() {
        return "Layout, fence or curtain moved";
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
                "scanner fields",
                Proof.RISK,
                "yes",
                Proof.SHEET,
                "plan");
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
