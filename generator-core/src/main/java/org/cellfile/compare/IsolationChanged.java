package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** How energies are isolated, or how somebody is freed. The sheets that tell it are posted anew, and those who use them told. */
@AutoService(KindOfChange.class)
public final class IsolationChanged implements KindOfChange {

    private static final Pattern STATED = Pattern.compile("(energies|rescue)/.+");

    @Override
    public String id() {
        return "isolation";
    }

    @Override
    public String title() {
        return "Isolation of energies, freeing of persons";
    }

    @Override
    public Map<Proof, String> asks() {
        return Map.of(Proof.RISK, "review", Proof.SHEET, "yes");
    }

    @Override
    public boolean covers(Stating stating) {
        return stating.like(STATED);
    }
}
