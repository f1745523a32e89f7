package dev.injectorplanner.app.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Drawn secrets, and the hash under which the store knows them. */
public final class Secrets {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final String TYPED = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int GROUPS = 5;
    private static final int GROUP = 4;
    private static final int TOKEN_BYTES = 32;

    private Secrets() {}

    /** A password to be typed once: five groups of four from 31 letters and digits that look unlike, 99 bits. */
    public static String password() {
        StringBuilder password = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP; i++) {
            password.append(i > 0 && i % GROUP == 0 ? "-" : "").append(TYPED.charAt(RANDOM.nextInt(TYPED.length())));
        }
        return password.toString();
    }

    /** A token of 256 drawn bits. */
    static String token() {
        byte[] drawn = new byte[TOKEN_BYTES];
        RANDOM.nextBytes(drawn);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
    }

    static long stamp() {
        return RANDOM.nextLong();
    }

    /** SHA-256 in hexadecimal. Enough for what was drawn; what a person chose needs {@link PasswordHashing}. */
    public static String hash(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
