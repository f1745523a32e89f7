package dev.injectorplanner.app.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.oauth2.client.OAuth2AuthorizedClient;
import org.springframework.security.oauth2.client.web.OAuth2AuthorizedClientRepository;

/** The provider's tokens are of no use once somebody is known: none is kept. */
final class NoTokensKept implements OAuth2AuthorizedClientRepository {
    @Override
    public <T extends OAuth2AuthorizedClient> @Nullable T loadAuthorizedClient(
            String id, Authentication person, HttpServletRequest request) {
        return null;
    }

    @Override
    public void saveAuthorizedClient(
            OAuth2AuthorizedClient client,
            Authentication person,
            HttpServletRequest request,
            HttpServletResponse response) {
        // nothing to do
    }

    @Override
    public void removeAuthorizedClient(
            String id, Authentication person, HttpServletRequest request, HttpServletResponse response) {
        // nothing was kept
    }
}
