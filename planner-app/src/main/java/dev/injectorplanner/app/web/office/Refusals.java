package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.planning.Planning.NothingToPlanException;
import dev.injectorplanner.app.web.download.TooManyDownloadsException;
import dev.injectorplanner.app.web.frame.Frames;
import dev.injectorplanner.core.check.InvalidValueException;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

/** What a person did that cannot be, in one sentence on a page of its own. */
@ControllerAdvice(
        basePackages = {
            "dev.injectorplanner.app.web.week",
            "dev.injectorplanner.app.web.plan",
            "dev.injectorplanner.app.web.truck",
            "dev.injectorplanner.app.web.worklist",
            "dev.injectorplanner.app.web.order",
            "dev.injectorplanner.app.web.alerts",
            "dev.injectorplanner.app.web.life",
            "dev.injectorplanner.app.web.outlook",
            "dev.injectorplanner.app.web.imports",
            "dev.injectorplanner.app.web.jobs",
            "dev.injectorplanner.app.web.settings",
            "dev.injectorplanner.app.web.stock",
            "dev.injectorplanner.app.web.returns",
            "dev.injectorplanner.app.web.results",
            "dev.injectorplanner.app.web.replay",
            "dev.injectorplanner.app.web.find",
            "dev.injectorplanner.app.web.worklist"
        })
public class Refusals {
    private final Frames frames;

    Refusals(Frames frames) {
        this.frames = frames;
    }

    @ExceptionHandler(InvalidValueException.class)
    @ResponseStatus(HttpStatus.BAD_REQUEST)
    String refused(InvalidValueException e, Model model) {
        return page("Not possible", String.valueOf(e.getMessage()), model);
    }

    @ExceptionHandler(RefusedEntryException.class)
    @ResponseStatus(HttpStatus.UNPROCESSABLE_ENTITY)
    String refused(RefusedEntryException e, Model model) {
        return page("Not saved", String.valueOf(e.getMessage()), model);
    }

    @ExceptionHandler(MethodArgumentTypeMismatchException.class)
    @ResponseStatus(HttpStatus.BAD_REQUEST)
    String misread(MethodArgumentTypeMismatchException e, Model model) {
        return page(
                "Not possible",
                e.getName() + " \"" + e.getValue() + "\": cannot be read. Fix: go back and choose from the page.",
                model);
    }

    @ExceptionHandler(NothingToPlanException.class)
    @ResponseStatus(HttpStatus.CONFLICT)
    String nothing(NothingToPlanException e, Model model) {
        return page("Nothing to plan", String.valueOf(e.getMessage()), model);
    }

    @ExceptionHandler(TooManyDownloadsException.class)
    @ResponseStatus(HttpStatus.SERVICE_UNAVAILABLE)
    String tooMany(TooManyDownloadsException e, Model model) {
        return page("Try again later", String.valueOf(e.getMessage()), model);
    }

    @ExceptionHandler(Permissions.NotAllowedException.class)
    @ResponseStatus(HttpStatus.FORBIDDEN)
    String forbidden(Permissions.NotAllowedException e, Model model) {
        return page("You cannot do this", String.valueOf(e.getMessage()), model);
    }

    @ExceptionHandler(NotHereException.class)
    @ResponseStatus(HttpStatus.NOT_FOUND)
    String missing(NotHereException e, Model model) {
        return page("Not found", String.valueOf(e.getMessage()), model);
    }

    private String page(String title, String sentence, Model model) {
        model.addAttribute("frame", frames.of(""));
        model.addAttribute("title", title);
        model.addAttribute("sentence", sentence);
        return "said";
    }
}
