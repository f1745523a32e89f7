package dev.injectorplanner.app.web.frame;

/**
 * What this site calls itself, for the top of every page.
 *
 * @param name the name, or empty
 */
public record SiteName(String name) {}
