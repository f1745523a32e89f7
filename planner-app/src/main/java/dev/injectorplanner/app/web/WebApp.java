package dev.injectorplanner.app.web;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.security.SecurityParts;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.web.api.ApiParts;
import dev.injectorplanner.app.web.bay.BayPages;
import dev.injectorplanner.app.web.calendar.CalendarPage;
import dev.injectorplanner.app.web.frame.FrameParts;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.guard.GuardParts;
import dev.injectorplanner.app.web.jobs.JobsPage;
import dev.injectorplanner.app.web.people.PeopleParts;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.ProviderSettings;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.slf4j.bridge.SLF4JBridgeHandler;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.actuate.autoconfigure.endpoint.EndpointAutoConfiguration;
import org.springframework.boot.actuate.autoconfigure.endpoint.jackson.JacksonEndpointAutoConfiguration;
import org.springframework.boot.actuate.autoconfigure.endpoint.web.WebEndpointAutoConfiguration;
import org.springframework.boot.actuate.autoconfigure.web.server.ManagementContextAutoConfiguration;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.autoconfigure.context.LifecycleAutoConfiguration;
import org.springframework.boot.autoconfigure.context.PropertyPlaceholderAutoConfiguration;
import org.springframework.boot.autoconfigure.ssl.SslAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.health.autoconfigure.actuate.endpoint.HealthEndpointAutoConfiguration;
import org.springframework.boot.health.autoconfigure.contributor.HealthContributorAutoConfiguration;
import org.springframework.boot.health.autoconfigure.registry.HealthContributorRegistryAutoConfiguration;
import org.springframework.boot.http.converter.autoconfigure.HttpMessageConvertersAutoConfiguration;
import org.springframework.boot.jackson.autoconfigure.JacksonAutoConfiguration;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.HttpEncodingAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.MultipartAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.actuate.web.ServletManagementContextAutoConfiguration;
import org.springframework.boot.thymeleaf.autoconfigure.ThymeleafAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.actuate.web.server.TomcatServletManagementContextAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.actuate.endpoint.web.WebMvcHealthEndpointExtensionAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorMvcAutoConfiguration;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.context.support.GenericApplicationContext;

/** The pages: Spring Boot around objects that already exist. Only the parts listed are switched on. */
@SpringBootConfiguration(proxyBeanMethods = false)
@ImportAutoConfiguration({
    ConfigurationPropertiesAutoConfiguration.class,
    DispatcherServletAutoConfiguration.class,
    EndpointAutoConfiguration.class,
    ErrorMvcAutoConfiguration.class,
    HealthContributorAutoConfiguration.class,
    HealthContributorRegistryAutoConfiguration.class,
    HealthEndpointAutoConfiguration.class,
    HttpEncodingAutoConfiguration.class,
    HttpMessageConvertersAutoConfiguration.class,
    JacksonAutoConfiguration.class,
    JacksonEndpointAutoConfiguration.class,
    LifecycleAutoConfiguration.class,
    ManagementContextAutoConfiguration.class,
    MultipartAutoConfiguration.class,
    PropertyPlaceholderAutoConfiguration.class,
    SecurityAutoConfiguration.class,
    SecurityFilterAutoConfiguration.class,
    ServletManagementContextAutoConfiguration.class,
    ServletWebSecurityAutoConfiguration.class,
    SslAutoConfiguration.class,
    TomcatServletManagementContextAutoConfiguration.class,
    ThymeleafAutoConfiguration.class,
    TomcatServletWebServerAutoConfiguration.class,
    WebEndpointAutoConfiguration.class,
    WebMvcAutoConfiguration.class,
    WebMvcHealthEndpointExtensionAutoConfiguration.class
})
@Import({
    FrameParts.class,
    GuardParts.class,
    CalendarPage.class,
    JobsPage.class,
    SecurityParts.class,
    PeopleParts.class,
    BayPages.class,
    OfficePages.class,
    ApiParts.class,
    ErrorPage.class
})
public class WebApp {
    /** Objects that the application owns, made while Spring starts. */
    private record Owned(Application application, JobParts jobs, QuartzJobs quartz) implements AutoCloseable {
        static Owned of(Application application, JobsSettings settings) {
            try {
                JobParts jobs = JobParts.of(application, settings);
                return new Owned(application, jobs, jobs.ready(application.store()));
            } catch (RuntimeException e) {
                application.close();
                throw e;
            }
        }

        @Override
        public void close() {
            quartz.close();
            jobs.close();
            application.close();
        }
    }

    /** As below, without a provider. */
    public static RunningApp start(
            CompletableFuture<Application> opening, JobsSettings settings, Listening listening, SiteClock clock) {
        return start(opening, settings, listening, clock, Optional.empty());
    }

    /**
     * Starts pages and jobs, while the store may still be opening.
     *
     * @param listening where to listen, and how it is reached
     * @param clock which moment it is for the pages
     * @param provider what people sign in through besides name and password, if anything
     * @throws ServeException where the port is taken
     * @throws StoreException where the store cannot be opened
     */
    public static RunningApp start(
            CompletableFuture<Application> opening,
            JobsSettings settings,
            Listening listening,
            SiteClock clock,
            Optional<ProviderSettings> provider) {
        SLF4JBridgeHandler.removeHandlersForRootLogger();
        SLF4JBridgeHandler.install();
        System.setProperty(LoggingSystem.SYSTEM_PROPERTY, LoggingSystem.NONE); // logback.xml is already in force
        CompletableFuture<Owned> owned = opening.thenApply(application -> Owned.of(application, settings));
        try {
            ConfigurableApplicationContext context = new SpringApplicationBuilder(WebApp.class)
                    .initializers(published(owned, clock, provider))
                    .run(listening.arguments());
            Owned kept = owned.join();
            kept.quartz().begin(); // only now: what cannot listen fires nothing
            RunningApp running = new RunningApp(context, kept.quartz(), kept.jobs(), kept.application());
            SpringApplication.getShutdownHandlers().add(running::close);
            return running;
        } catch (RuntimeException e) {
            throw closed(owned, e, listening.port());
        }
    }

    private static ApplicationContextInitializer<GenericApplicationContext> published(
            CompletableFuture<Owned> owned, SiteClock clock, Optional<ProviderSettings> provider) {
        return context -> {
            context.registerBean(
                    "application",
                    Application.class,
                    () -> owned.join().application(),
                    kept -> kept.setDestroyMethodName(""));
            context.registerBean(
                    "store",
                    Store.class,
                    () -> owned.join().application().store(),
                    kept -> kept.setDestroyMethodName(""));
            context.registerBean(
                    "jobParts", JobParts.class, () -> owned.join().jobs(), kept -> kept.setDestroyMethodName(""));
            context.registerBean(
                    "quartz", QuartzJobs.class, () -> owned.join().quartz(), kept -> kept.setDestroyMethodName(""));
            context.registerBean("planner", JobsHealth.class);
            context.registerBean("siteClock", SiteClock.class, () -> clock);
            provider.ifPresent(set -> context.registerBean("providerSettings", ProviderSettings.class, () -> set));
        };
    }

    /** What went wrong in words; the store is closed where it had been opened. */
    private static RuntimeException closed(CompletableFuture<Owned> owned, RuntimeException e, int port) {
        try {
            owned.join().close();
        } catch (CompletionException failed) {
            return failed.getCause() instanceof RuntimeException cause ? cause : failed;
        }
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof PortInUseException) {
                return new ServeException(
                        "Port " + port + " is in use. Fix: choose another with --port, or stop the program using it.",
                        e);
            }
        }
        return e;
    }
}
