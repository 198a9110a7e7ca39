package org.cellfile.compare;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.regex.Pattern;

/** What is about people, papers and signing. It changes no figure; the paper it stands on is printed anew. */
@AutoService(KindOfChange.class)
public final class PapersChanged implements KindOfChange {

    private static final Pattern STATED =
            Pattern.compile("cell/(id|name|integrator|revision|as-of|page|both-units|emergency-phone)"
                    + "|(revisions|people|competences|dates|keys|sign-offs|sign-off-policy|copies|left-out|sheets|mode-keys|spare-actuators|open-points|bypasses|changes|decisions)/.+"
                    + "|no-spares"
                    + "|plan/(drawing|axes)"
                    + "|(zones|safeguards|complementary|modes|functions|subsystems|parts)/[^/]+/name");

    @Override
    public String id() {
        return "papers";
    }

    @Override
    public String title() {
        return "Names, papers and registers";
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
