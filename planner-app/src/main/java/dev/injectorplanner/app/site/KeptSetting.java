package dev.injectorplanner.app.site;

import java.time.Instant;

/**
 * What the site has set.
 *
 * @param name of its {@link SettingKind}
 * @param value as kept
 * @param version grows with every change of any setting
 * @param changedAt when it was set
 * @param changedBy by whom
 */
public record KeptSetting(String name, String value, long version, Instant changedAt, String changedBy) {
    /** The version of a setting that the site has not set. */
    public static final long UNSET = 0;
}
