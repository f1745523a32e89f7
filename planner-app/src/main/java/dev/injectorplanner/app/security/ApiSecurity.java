package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Scope;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AuthorityAuthorizationManager;
import org.springframework.security.authorization.AuthorizationManagers;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;

/** The API: tokens only, no session, no cookie, hence no form of another site that could borrow one. */
@Configuration(proxyBeanMethods = false)
class ApiSecurity {
    /** The description says nothing of the site, so everybody may read it. */
    static final String DESCRIPTION = "/api/v1/openapi.json";

    @Bean
    @Order(1)
    SecurityFilterChain api(HttpSecurity http, ApiTokens tokens) throws Exception {
        return http.securityMatcher("/api/**")
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .addFilterBefore(new BearerFilter(tokens), AnonymousAuthenticationFilter.class)
                .authorizeHttpRequests(rules -> {
                    rules.dispatcherTypeMatchers(DispatcherType.ERROR).permitAll();
                    rules(rules);
                })
                .exceptionHandling(
                        refusals -> refusals.authenticationEntryPoint((request, response, e) -> unknown(response))
                                .accessDeniedHandler((request, response, e) -> forbidden(response)))
                .headers(SecurityHeaders::set)
                .build();
    }

    private static void rules(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry rules) {
        rules.requestMatchers(HttpMethod.GET, DESCRIPTION)
                .permitAll()
                .requestMatchers(HttpMethod.GET, "/api/v1/readings")
                .hasAuthority(Scope.READINGS_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/readings")
                .hasAuthority(Scope.READINGS_WRITE.text())
                .requestMatchers(HttpMethod.GET, "/api/v1/faults")
                .hasAuthority(Scope.FAULTS_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/faults")
                .hasAuthority(Scope.FAULTS_WRITE.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/logs")
                .access(AuthorizationManagers.allOf(
                        AuthorityAuthorizationManager.hasAuthority(Scope.FAULTS_WRITE.text()),
                        AuthorityAuthorizationManager.hasAuthority(Scope.READINGS_WRITE.text())))
                .requestMatchers(HttpMethod.GET, "/api/v1/close-outs")
                .hasAuthority(Scope.CLOSE_OUTS_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/close-outs")
                .hasAuthority(Scope.CLOSE_OUTS_WRITE.text())
                .requestMatchers(HttpMethod.GET, "/api/v1/orders")
                .hasAuthority(Scope.ORDERS_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/orders")
                .hasAuthority(Scope.ORDERS_WRITE.text())
                .requestMatchers(HttpMethod.GET, "/api/v1/returns")
                .hasAuthority(Scope.RETURNS_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/returns")
                .hasAuthority(Scope.RETURNS_WRITE.text())
                .requestMatchers(HttpMethod.GET, "/api/v1/stock")
                .hasAuthority(Scope.STOCK_READ.text())
                .requestMatchers(HttpMethod.POST, "/api/v1/stock")
                .hasAuthority(Scope.STOCK_WRITE.text())
                .requestMatchers(HttpMethod.GET, "/api/v1/plan")
                .hasAuthority(Scope.PLAN_READ.text())
                .anyRequest()
                .denyAll();
    }

    private static void unknown(HttpServletResponse response) throws IOException {
        response.setHeader("WWW-Authenticate", "Bearer");
        ProblemDetails.write(
                response,
                ProblemDetails.of(
                        401,
                        "No active token",
                        "The request has no active token. Fix: send Authorization: Bearer TOKEN; the administrator"
                                + " creates tokens under Settings."));
    }

    private static void forbidden(HttpServletResponse response) throws IOException {
        ProblemDetails.write(
                response,
                ProblemDetails.of(
                        403,
                        "The token does not allow this",
                        "The token's scopes do not cover this address and method. Fix: use a token with the required scope."));
    }
}
