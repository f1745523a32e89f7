package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.PasswordHashing;
import java.util.Map;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder.SecretKeyFactoryAlgorithm;

/**
 * PBKDF2 with HMAC-SHA-256, 600,000 rounds (the OWASP Password Storage Cheat Sheet's figure, from memory), 16 bytes of
 * salt. Unlike bcrypt it takes passwords longer than 72 bytes whole. The method stands before each hash, so that another can
 * follow.
 */
public final class Pbkdf2Hashing implements PasswordHashing {
    private static final int SALT_BYTES = 16;
    private static final int ROUNDS = 600_000;
    private static final String METHOD = "pbkdf2-600k";

    private final PasswordEncoder encoder = new DelegatingPasswordEncoder(
            METHOD,
            Map.of(
                    METHOD,
                    new Pbkdf2PasswordEncoder("", SALT_BYTES, ROUNDS, SecretKeyFactoryAlgorithm.PBKDF2WithHmacSHA256)));

    @Override
    public String hash(CharSequence password) {
        String hash = encoder.encode(password);
        if (hash == null) {
            throw new IllegalStateException("no hash was made");
        }
        return hash;
    }

    @Override
    public boolean matches(CharSequence password, String hash) {
        return encoder.matches(password, hash);
    }

    @Override
    public boolean isOld(String hash) {
        return encoder.upgradeEncoding(hash);
    }
}
