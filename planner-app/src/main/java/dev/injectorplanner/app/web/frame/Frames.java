package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.site.SiteSettings;
import java.util.stream.Collectors;

/** Makes the frame of a page for whoever looks at it. */
public final class Frames {
    private final Viewers viewers;
    private final SiteName site;
    private final SiteSettings settings;
    private final Alerts alerts;

    Frames(Viewers viewers, SiteName site, SiteSettings settings, Alerts alerts) {
        this.viewers = viewers;
        this.site = site;
        this.settings = settings;
        this.alerts = alerts;
    }

    /** @param path the page's address; empty where it is none of the menu */
    public Frame of(String path) {
        Viewer viewer = viewers.now();
        String roles =
                viewer.roles().stream().sorted().map(role -> role.words()).collect(Collectors.joining(", "));
        String depot = viewer.depot() == null ? "all depots" : viewer.depot();
        int raised = Navigation.mayGo(viewer, Navigation.ALERTS) ? alerts.countRaised(viewer.depot()) : 0;
        return new Frame(
                site.name(),
                settings.form().currency(),
                viewer.name() + ", " + roles + ", " + depot,
                Navigation.entries(viewer, path, raised),
                Navigation.changes(viewer));
    }
}
