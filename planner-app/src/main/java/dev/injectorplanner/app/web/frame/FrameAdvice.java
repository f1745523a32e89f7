package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Viewer;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Puts the frame and who looks into the model of every page. */
@ControllerAdvice
class FrameAdvice {
    private final Viewers viewers;
    private final Frames frames;

    FrameAdvice(Viewers viewers, Frames frames) {
        this.viewers = viewers;
        this.frames = frames;
    }

    @ModelAttribute("viewer")
    Viewer viewer() {
        return viewers.now();
    }

    @ModelAttribute("frame")
    Frame frame(HttpServletRequest request) {
        return frames.of(request.getRequestURI());
    }
}
