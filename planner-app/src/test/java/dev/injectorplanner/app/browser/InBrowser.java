package dev.injectorplanner.app.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Needs Chromium. Tests may take the {@link Site.Demo} or the {@link Site.Empty}, each started once for all. Without a
 * browser the tests are skipped and say why; where {@code CI=true} they fail instead.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(BrowserExtension.class)
@interface InBrowser {}
