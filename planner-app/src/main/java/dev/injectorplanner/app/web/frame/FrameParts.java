package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** What all pages share, as beans. */
@Configuration(proxyBeanMethods = false)
@Import(FrameAdvice.class)
public class FrameParts {
    @Bean
    PlansInForce plansInForce(Application application) {
        return new PlansInForce(application.plans());
    }

    @Bean
    Fleets fleets(Application application) {
        return new Fleets(application.store());
    }

    @Bean
    SiteName siteName(Application application) {
        return application.settings()::siteName;
    }

    @Bean
    Frames frames(Viewers viewers, SiteName site, Application application) {
        return new Frames(
                viewers,
                site,
                application.settings(),
                new Alerts(application.store().dataSource()));
    }
}
