package dev.injectorplanner.app.web.people;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The pages of this package. */
@Configuration(proxyBeanMethods = false)
@Import({PeoplePage.class, TokensPage.class, AuditPage.class})
public class PeopleParts {}
