package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.web.calendar.CalendarPage;
import dev.injectorplanner.app.web.frame.Navigation;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;

/** Who may go where: the list of places as rules. What is in no list is refused. */
final class PageRules {
    /** What is open to everybody. */
    static final String[] OPEN = {
        SignInPage.SIGN_IN,
        "/actuator/health",
        "/*.css",
        "/*.js",
        "/icon.svg",
        "/script/**",
        "/zxing/**",
        CalendarPage.PATH + "*.ics"
    };

    private PageRules() {}

    static void set(AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry rules) {
        rules.requestMatchers(OPEN).permitAll();
        rules.requestMatchers("/", SignInPage.PASSWORD).authenticated();
        for (Navigation.Inner inner : Navigation.INNER) {
            rules.requestMatchers(HttpMethod.POST, at(inner.path())).hasAnyAuthority(names(inner.changers()));
            rules.requestMatchers(at(inner.path())).hasAnyAuthority(names(inner.roles()));
        }
        for (Navigation.Place place : Navigation.PLACES) {
            rules.requestMatchers(HttpMethod.GET, at(place.path())).hasAnyAuthority(names(place.roles()));
            rules.requestMatchers(HttpMethod.HEAD, at(place.path())).hasAnyAuthority(names(place.roles()));
            rules.requestMatchers(HttpMethod.POST, at(place.path())).hasAnyAuthority(names(place.changers()));
        }
        rules.anyRequest().denyAll();
    }

    private static String[] at(String path) {
        return new String[] {path, path + "/**"};
    }

    private static String[] names(Set<Role> roles) {
        return roles.stream().map(Role::name).sorted().toArray(String[]::new);
    }
}
