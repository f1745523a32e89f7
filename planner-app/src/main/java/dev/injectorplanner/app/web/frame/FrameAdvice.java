package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Viewer;
import jakarta.servlet.http.HttpServletRequest;
import java.util.stream.Collectors;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Puts the frame and who looks into the model of every page. */
@ControllerAdvice
class FrameAdvice {
    private final Viewers viewers;
    private final SiteName site;

    FrameAdvice(Viewers viewers, SiteName site) {
        this.viewers = viewers;
        this.site = site;
    }

    @ModelAttribute("viewer")
    Viewer viewer() {
        return viewers.now();
    }

    @ModelAttribute("frame")
    Frame frame(HttpServletRequest request) {
        Viewer viewer = viewers.now();
        String roles =
                viewer.roles().stream().sorted().map(role -> role.words()).collect(Collectors.joining(", "));
        String depot = viewer.depot() == null ? "all depots" : viewer.depot();
        return new Frame(
                site.name(),
                viewer.name() + ", " + roles + ", " + depot,
                Navigation.entries(viewer, request.getRequestURI(), 0));
    }
}
