package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Viewer;

/** Tells who looks at the page that is being made. */
@FunctionalInterface
public interface Viewers {
    Viewer now();
}
