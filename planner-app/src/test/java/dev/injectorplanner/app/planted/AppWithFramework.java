package dev.injectorplanner.app.planted;

import org.springframework.context.ApplicationContext;

/** Breaks a rule on purpose. */
public final class AppWithFramework {
    ApplicationContext context;
}
