package dev.injectorplanner.app.web.bay;

import org.springframework.web.util.UriUtils;

/** Addresses of this package's pages, whatever characters a truck's name has. */
final class BayAddresses {
    private BayAddresses() {}

    static String bay(String truck) {
        return "/bay/" + part(truck);
    }

    static String start(String truck) {
        return "/start/" + part(truck);
    }

    static String part(String name) {
        return UriUtils.encodePathSegment(name, java.nio.charset.StandardCharsets.UTF_8);
    }

    static String query(String value) {
        return UriUtils.encodeQueryParam(value, java.nio.charset.StandardCharsets.UTF_8);
    }
}
