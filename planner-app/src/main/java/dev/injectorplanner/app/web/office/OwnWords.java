package dev.injectorplanner.app.web.office;

import org.springframework.ui.Model;

/**
 * Words that one page leaves for the next: they go through the person's session, not through the address, in which anybody
 * could put words onto the page of somebody who follows a link.
 */
public final class OwnWords {
    private OwnWords() {}

    /** Keeps what the page before left, or nothing. */
    public static void keep(Model model, String name) {
        if (!model.containsAttribute(name)) {
            model.addAttribute(name, "");
        }
    }
}
