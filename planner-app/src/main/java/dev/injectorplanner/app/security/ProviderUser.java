package dev.injectorplanner.app.security;

import java.util.List;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.DefaultOidcUser;

/** Somebody whom the provider vouches for and who is a person here. */
final class ProviderUser extends DefaultOidcUser {
    private static final long serialVersionUID = 1L;

    private final SignedIn signedIn;

    ProviderUser(OidcIdToken token, SignedIn signedIn) {
        super(List.of(), token);
        this.signedIn = signedIn;
    }

    SignedIn signedIn() {
        return signedIn;
    }

    @Override
    public boolean equals(Object other) {
        return super.equals(other) && other instanceof ProviderUser user && user.signedIn.equals(signedIn);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + signedIn.hashCode();
    }
}
