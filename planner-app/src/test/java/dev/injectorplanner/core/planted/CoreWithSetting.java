package dev.injectorplanner.core.planted;

/** Breaks a rule on purpose. */
public final class CoreWithSetting {
    String setting() {
        return System.getProperty("user.name");
    }
}
