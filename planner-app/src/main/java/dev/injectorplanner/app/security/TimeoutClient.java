package dev.injectorplanner.app.security;

import java.time.Duration;
import org.springframework.http.client.SimpleClientHttpRequestFactory;
import org.springframework.http.converter.FormHttpMessageConverter;
import org.springframework.security.oauth2.client.endpoint.RestClientAuthorizationCodeTokenResponseClient;
import org.springframework.security.oauth2.client.http.OAuth2ErrorResponseErrorHandler;
import org.springframework.security.oauth2.core.http.converter.OAuth2AccessTokenResponseHttpMessageConverter;
import org.springframework.web.client.RestClient;

/** Asks the provider for tokens, and does not wait for it for ever. */
final class TimeoutClient {
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private TimeoutClient() {}

    static RestClientAuthorizationCodeTokenResponseClient make() {
        SimpleClientHttpRequestFactory patient = new SimpleClientHttpRequestFactory();
        patient.setConnectTimeout(PATIENCE);
        patient.setReadTimeout(PATIENCE);
        RestClientAuthorizationCodeTokenResponseClient client = new RestClientAuthorizationCodeTokenResponseClient();
        client.setRestClient(RestClient.builder()
                .requestFactory(patient)
                .configureMessageConverters(converters -> converters
                        .addCustomConverter(new FormHttpMessageConverter())
                        .addCustomConverter(new OAuth2AccessTokenResponseHttpMessageConverter()))
                .defaultStatusHandler(new OAuth2ErrorResponseErrorHandler())
                .build());
        return client;
    }
}
