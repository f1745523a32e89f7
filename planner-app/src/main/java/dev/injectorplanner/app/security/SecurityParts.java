package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.frame.Viewers;
import dev.injectorplanner.app.wiring.ProviderSettings;
import io.github.bucket4j.TimeMeter;
import jakarta.servlet.DispatcherType;
import java.time.InstantSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.csrf.CsrfFilter;

/** Signing in to the pages, as beans. */
@Configuration(proxyBeanMethods = false)
@Import({SignInPage.class, ApiSecurity.class})
public class SecurityParts {
    static final String COOKIE = "planner_session";

    /** The guard says so where the database does not answer; those that ask who is there come later. */
    private static final int AFTER_THE_GUARD = Ordered.HIGHEST_PRECEDENCE + 10;

    @Bean
    People people(Store store) {
        return new People(store.dataSource(), new Pbkdf2Hashing());
    }

    @Bean
    ApiTokens apiTokens(Store store) {
        return new ApiTokens(store.dataSource());
    }

    @Bean
    AuditTrail auditTrail(Store store) {
        return new AuditTrail(store.dataSource());
    }

    @Bean
    SignInThrottle signInThrottle(Store store) {
        return new SignInThrottle(
                store.isShared()
                        ? TryBuckets.shared(store.dataSource())
                        : TryBuckets.ofThisProcess(TimeMeter.SYSTEM_NANOTIME));
    }

    @Bean
    FilterRegistrationBean<SharedSessions> sharedSessions(Store store, Environment environment) {
        boolean tlsOnly = environment.getProperty("server.servlet.session.cookie.secure", Boolean.class, true);
        SharedSessions sessions = new SharedSessions(store, tlsOnly);
        FilterRegistrationBean<SharedSessions> registered = new FilterRegistrationBean<>(sessions);
        registered.setEnabled(sessions.areShared());
        registered.setOrder(AFTER_THE_GUARD);
        return registered;
    }

    /** Only within a page's request: there is somebody then. */
    @Bean
    Viewers viewers() {
        return () -> {
            Authentication known = SecurityContextHolder.getContext().getAuthentication();
            if (known != null && known.getPrincipal() instanceof Viewer viewer) {
                return viewer;
            }
            return Viewer.NOBODY;
        };
    }

    @Bean
    @Order(2)
    SecurityFilterChain pages(
            HttpSecurity http, People people, SignInThrottle throttle, ObjectProvider<ProviderSettings> provider)
            throws Exception {
        InstantSource clock = InstantSource.system();
        ProviderSettings through = provider.getIfAvailable();
        if (through != null) {
            ProviderSignIn.set(http, through, people, clock);
        }
        return http.authenticationProvider(new SignInCheck(people, throttle, clock))
                .authorizeHttpRequests(rules -> {
                    // what is written after the request was let in: an error's page, a file that is streamed
                    rules.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.ASYNC)
                            .permitAll();
                    PageRules.set(rules);
                })
                .addFilterBefore(new UnreadableForms(), CsrfFilter.class)
                .addFilterBefore(new CurrentPerson(people, clock), AuthorizationFilter.class)
                .formLogin(form -> form.loginPage(SignInPage.SIGN_IN)
                        .loginProcessingUrl(SignInPage.SIGN_IN)
                        .usernameParameter("name")
                        .passwordParameter("password")
                        .successHandler(new AfterSignIn())
                        .failureHandler(AfterSignIn::failed))
                .logout(out -> out.logoutUrl(SignInPage.SIGN_OUT)
                        .logoutSuccessUrl(SignInPage.SIGN_IN + "?out")
                        .deleteCookies(COOKIE))
                .exceptionHandling(refusals -> refusals.accessDeniedHandler(new Refusal()))
                .headers(SecurityHeaders::set)
                .build();
    }
}
