package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import java.time.InstantSource;
import java.util.Set;
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
    SiteClock siteClock() {
        return new SiteClock(InstantSource.system());
    }

    @Bean
    SiteName siteName() {
        return new SiteName("");
    }

    /** Until people sign in, whoever sits at this machine may do all. */
    @Bean
    Viewers viewers() {
        return () -> new Viewer("this machine", Set.of(Role.values()), null);
    }
}
