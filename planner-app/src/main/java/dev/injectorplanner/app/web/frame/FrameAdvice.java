package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Viewer;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
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

    /** None on an error's page, which has to come without the store. */
    @ModelAttribute("frame")
    @Nullable
    Frame frame(HttpServletRequest request) {
        return request.getDispatcherType() == DispatcherType.ERROR ? null : frames.of(request.getRequestURI());
    }
}
