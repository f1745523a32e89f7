package dev.injectorplanner.app.planted;

import org.quartz.Scheduler;

/** Breaks a rule on purpose. */
public final class AppWithQuartz {
    Scheduler scheduler;
}
