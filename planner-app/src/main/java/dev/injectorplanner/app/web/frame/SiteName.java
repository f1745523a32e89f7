package dev.injectorplanner.app.web.frame;

/** What this site calls itself, for the top of every page. */
@FunctionalInterface
public interface SiteName {
    /** The name, or empty. */
    String name();
}
