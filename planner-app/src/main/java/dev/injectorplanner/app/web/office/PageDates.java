package dev.injectorplanner.app.web.office;

import java.util.Set;
import org.thymeleaf.dialect.IPostProcessorDialect;
import org.thymeleaf.postprocessor.IPostProcessor;
import org.thymeleaf.postprocessor.PostProcessor;
import org.thymeleaf.templatemode.TemplateMode;

/**
 * One form of date on all pages: sentences of the engine and remarks of stored rows carry ISO dates, and become {@code 2 Mar 2026}
 * as they are written out. Values of fields and addresses stay as they are.
 */
public final class PageDates implements IPostProcessorDialect {
    private static final int LAST = 1_000;

    @Override
    public String getName() {
        return "dates";
    }

    @Override
    public int getDialectPostProcessorPrecedence() {
        return LAST;
    }

    @Override
    public Set<IPostProcessor> getPostProcessors() {
        return Set.of(new PostProcessor(TemplateMode.HTML, PageDatesWriter.class, LAST));
    }
}
