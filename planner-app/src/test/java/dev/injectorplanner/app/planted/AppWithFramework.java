package dev.injectorplanner.app.planted;

import org.springframework.planted.StandIn;

/** Breaks a rule on purpose: knows the web framework where it may not. */
public final class AppWithFramework {
    StandIn bean() {
        return new StandIn();
    }
}
