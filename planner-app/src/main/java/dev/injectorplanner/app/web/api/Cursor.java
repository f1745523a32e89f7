package dev.injectorplanner.app.web.api;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/**
 * Where a page begins.
 *
 * @param after number of the row before it; 0 for the first
 * @param most rows at most, 1 to {@value #MOST}
 */
public record Cursor(long after, int most) {
    /** Rows of a page at most. */
    public static final int MOST = 1_000;

    private static final int USUAL = 100;

    /**
     * As it was asked for.
     *
     * @param cursor what the page before gave as {@code next}, or null
     * @param limit rows at most, or null
     * @throws ApiRefusal where one of them is not that
     */
    public static Cursor of(@Nullable String cursor, @Nullable String limit) {
        return new Cursor(cursor == null ? 0 : after(cursor), limit == null ? USUAL : most(limit));
    }

    private static long after(String cursor) {
        try {
            return Long.parseLong(new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.US_ASCII));
        } catch (IllegalArgumentException e) {
            throw ApiRefusal.badRequest(
                    "cursor was not issued here. Fix: send the value of next from the previous page.");
        }
    }

    private static int most(String limit) {
        if (!limit.matches("[1-9]\\d{0,3}") || Integer.parseInt(limit) > MOST) {
            throw ApiRefusal.badRequest(
                    "limit is not a number from 1 to " + MOST + ". Fix: write one, or leave it out.");
        }
        return Integer.parseInt(limit);
    }

    static String text(long after) {
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(String.valueOf(after).getBytes(StandardCharsets.US_ASCII));
    }
}
