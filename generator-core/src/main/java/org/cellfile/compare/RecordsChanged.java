package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** What was measured and tested, when, by whom and with what, and the values somebody recorded. It voids nothing by itself: it answers changes. */
@AutoService(KindOfChange.class)
public final class RecordsChanged implements KindOfChange {

    private static final Pattern STATED =
            Pattern.compile("stop-tests/(?![^/]+/(used-at/|brake-monitor$|wear-allowance/)).+"
                    + "|table/.+"
                    + "|tests/.+"
                    + "|test-plan/.+"
                    + "|instruments/.+"
                    + "|configurations/[^/]+/(tested|installed|posted)/(on|by)"
                    + "|safeguards/[^/]+/installed/(by|on|instrument)"
                    + "|clearances/[^/]+/(by|on|instrument)"
                    + "|plan/(by|on)"
                    + "|[^/]+/[^/]+/(.+/)?stated/.+");

    @Override
    public String id() {
        return "records";
    }

    @Override
    public String title() {
        return "Records of measuring and testing";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of();
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }

    @Override
    public boolean ofTheMachine() {
        return false;
    }
}
