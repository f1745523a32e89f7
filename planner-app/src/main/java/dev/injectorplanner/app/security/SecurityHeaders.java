package dev.injectorplanner.app.security;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** What a browser is told to refuse. Pages have no script and no style within themselves, and need nothing from elsewhere. */
final class SecurityHeaders {
    static final String CONTENT =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; worker-src 'self';"
                    + " connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    private SecurityHeaders() {}

    static void set(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT))
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(policy -> policy.policy("camera=(self), geolocation=(), microphone=()"))
                .crossOriginOpenerPolicy(policy -> policy.policy(
                        org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter
                                .CrossOriginOpenerPolicy.SAME_ORIGIN));
    }
}
