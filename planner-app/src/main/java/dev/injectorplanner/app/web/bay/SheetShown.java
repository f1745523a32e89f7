package dev.injectorplanner.app.web.bay;

import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;

/**
 * How a bay sheet is shown this time.
 *
 * @param typed its form
 * @param again whether it holds what somebody sent just now
 * @param more whether a close-out beside the kept one is asked for
 * @param checkedOnly whether it was looked through and not kept
 * @param saved {@code now} or {@code before} right after it was kept, else empty
 * @param said what was done, or null
 * @param overWrong why a correction was refused, or null
 */
record SheetShown(
        FormState typed,
        boolean again,
        boolean more,
        boolean checkedOnly,
        String saved,
        @Nullable String said,
        @Nullable String overWrong) {
    static SheetShown first(FormState typed, boolean more, String saved) {
        return new SheetShown(typed, false, more, false, saved, null, null);
    }

    static SheetShown again(FormState typed, boolean more) {
        return new SheetShown(typed, true, more, false, "", null, null);
    }

    SheetShown checked() {
        return new SheetShown(typed, again, more, true, saved, said, overWrong);
    }

    SheetShown saying(String words) {
        return new SheetShown(typed, again, more, checkedOnly, saved, words, overWrong);
    }

    SheetShown refusing(String why) {
        return new SheetShown(typed, again, more, checkedOnly, saved, said, why);
    }

    /** Puts it all into a page's model, with the record of what was done where that is shown instead of the form. */
    void into(TruckInBay at, Model model) {
        model.addAttribute("again", again);
        model.addAttribute("more", more);
        model.addAttribute("checkedOnly", checkedOnly);
        model.addAttribute("saved", saved);
        model.addAttribute("said", said);
        model.addAttribute("overWrong", overWrong);
        model.addAttribute("record", at.done() == null || more || again ? null : DoneRecord.of(at, at.done()));
    }
}
