package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.units.SiteForm;
import java.util.Set;
import org.thymeleaf.engine.AbstractTemplateHandler;
import org.thymeleaf.model.ICloseElementTag;
import org.thymeleaf.model.IOpenElementTag;
import org.thymeleaf.model.IText;

/** Writes the dates of one page; the library makes one a page. */
public final class PageDatesWriter extends AbstractTemplateHandler {
    /** What is read by programs, or is the reader's own text. */
    private static final Set<String> RAW = Set.of("script", "style", "textarea", "option", "code", "pre");

    /** Pages that show what files and stored rows say, letter by letter. */
    private static final Set<String> AS_TYPED =
            Set.of("imports", "load", "match", "match-done", "tables", "row", "rows", "audit");

    private int raw;

    @Override
    public void handleOpenElement(IOpenElementTag tag) {
        raw += RAW.contains(tag.getElementCompleteName()) ? 1 : 0;
        super.handleOpenElement(tag);
    }

    @Override
    public void handleCloseElement(ICloseElementTag tag) {
        raw -= RAW.contains(tag.getElementCompleteName()) ? 1 : 0;
        super.handleCloseElement(tag);
    }

    @Override
    public void handleText(IText text) {
        super.handleText(
                raw > 0
                                || !mayHoldADate(text)
                                || AS_TYPED.contains(
                                        getContext().getTemplateData().getTemplate())
                        ? text
                        : getContext()
                                .getModelFactory()
                                .createText(SiteForm.dated(text.getText(), DisplayFormat::shortDate)));
    }

    /** Asked of every text of a page: most have no hyphen between digits. */
    private static boolean mayHoldADate(CharSequence text) {
        for (int at = 4; at + 5 < text.length(); at++) {
            if (text.charAt(at) == '-' && digit(text.charAt(at - 1)) && digit(text.charAt(at + 1))) {
                return true;
            }
        }
        return false;
    }

    private static boolean digit(char letter) {
        return letter >= '0' && letter <= '9';
    }
}
