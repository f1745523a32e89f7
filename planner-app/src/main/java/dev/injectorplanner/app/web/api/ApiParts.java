package dev.injectorplanner.app.web.api;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The API. */
@Configuration(proxyBeanMethods = false)
@Import({ApiPage.class, CloseOutApi.class, LogApi.class, ShopApi.class, ApiErrors.class})
public class ApiParts {}
