package dev.injectorplanner.app.security;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * A provider of OpenID Connect in this process: description, authorization with PKCE, tokens, keys. It vouches for
 * {@code buyer}, unless a test makes its next token say something else.
 */
final class SmallProvider implements AutoCloseable {
    static final String CLIENT = "planner";
    static final String SECRET = "kept in a file";

    private final HttpServer server;
    private final RSAKey key = key("first");
    private final Map<String, Map<String, String>> asked = new HashMap<>();
    private final List<String> problems = new ArrayList<>();
    private RSAKey signing = key;
    private Consumer<JWTClaimsSet.Builder> next = claims -> {};
    private int descriptions;

    SmallProvider(int port) throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.createContext("/.well-known/openid-configuration", this::describe);
        server.createContext("/authorize", this::authorize);
        server.createContext("/token", this::token);
        server.createContext("/jwks", exchange -> json(exchange, new JWKSet(key.toPublicJWK()).toString()));
        server.start();
    }

    private static RSAKey key(String id) {
        try {
            return new RSAKeyGenerator(2048).keyID(id).generate();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    int port() {
        return server.getAddress().getPort();
    }

    String issuer() {
        return "http://127.0.0.1:" + port();
    }

    int descriptions() {
        return descriptions;
    }

    /** What it was asked that it should not have been. */
    List<String> problems() {
        return problems;
    }

    /** The next token says something else. */
    void say(Consumer<JWTClaimsSet.Builder> claims) {
        next = claims;
        signing = key;
    }

    /** The next token is signed with a key that is not the provider's, under the same name. */
    void signWithAnother() {
        say(claims -> {});
        signing = key("first");
    }

    private void describe(HttpExchange exchange) throws IOException {
        descriptions++;
        json(exchange, """
                {"issuer":"%1$s","authorization_endpoint":"%1$s/authorize","token_endpoint":"%1$s/token",
                "jwks_uri":"%1$s/jwks","response_types_supported":["code"],"subject_types_supported":["public"],
                "id_token_signing_alg_values_supported":["RS256"]}""".formatted(issuer()));
    }

    private void authorize(HttpExchange exchange) throws IOException {
        Map<String, String> query = form(exchange.getRequestURI().getRawQuery());
        check(query.get("client_id").equals(CLIENT), "client " + query.get("client_id"));
        check(query.get("response_type").equals("code"), "response type");
        check("S256".equals(query.get("code_challenge_method")), "no proof key");
        check(query.getOrDefault("state", "").length() > 20, "no state");
        check(query.getOrDefault("nonce", "").length() > 20, "no nonce");
        check(query.get("scope").contains("openid"), "scope");
        String code = UUID.randomUUID().toString();
        asked.put(code, query);
        exchange.getResponseHeaders()
                .set("Location", query.get("redirect_uri") + "?code=" + code + "&state=" + query.get("state"));
        exchange.sendResponseHeaders(302, -1);
        exchange.close();
    }

    private void token(HttpExchange exchange) throws IOException {
        Map<String, String> form = form(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        Map<String, String> query = asked.remove(form.get("code"));
        String basic = Base64.getEncoder()
                .encodeToString((CLIENT + ":" + SECRET.replace(' ', '+')).getBytes(StandardCharsets.UTF_8));
        check(("Basic " + basic).equals(exchange.getRequestHeaders().getFirst("Authorization")), "secret");
        check(query.get("redirect_uri").equals(form.get("redirect_uri")), "address to come back to");
        check(query.get("code_challenge").equals(challenge(form.get("code_verifier"))), "proof key");
        json(
                exchange,
                "{\"access_token\":\"a\",\"token_type\":\"Bearer\",\"expires_in\":60,\"id_token\":\""
                        + signed(query.get("nonce")) + "\"}");
    }

    private String signed(String nonce) {
        Instant now = Instant.now();
        JWTClaimsSet.Builder claims = new JWTClaimsSet.Builder()
                .issuer(issuer())
                .audience(CLIENT)
                .subject("248289761001")
                .issueTime(Date.from(now))
                .expirationTime(Date.from(now.plusSeconds(300)))
                .claim("nonce", nonce)
                .claim("email", "buyer")
                .claim("email_verified", true);
        next.accept(claims);
        try {
            SignedJWT token = new SignedJWT(
                    new JWSHeader.Builder(JWSAlgorithm.RS256)
                            .keyID(signing.getKeyID())
                            .build(),
                    claims.build());
            token.sign(new RSASSASigner(signing));
            return token.serialize();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String challenge(String verifier) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(verifier.getBytes(StandardCharsets.US_ASCII));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(hash);
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private void check(boolean right, String problem) {
        if (!right) {
            problems.add(problem);
        }
    }

    static Map<String, String> form(String text) {
        Map<String, String> form = new HashMap<>();
        for (String field : text.split("&")) {
            int at = field.indexOf('=');
            form.put(
                    URLDecoder.decode(field.substring(0, at), StandardCharsets.UTF_8),
                    URLDecoder.decode(field.substring(at + 1), StandardCharsets.UTF_8));
        }
        return form;
    }

    static String query(String address) {
        return URI.create(address).getRawQuery();
    }

    private static void json(HttpExchange exchange, String body) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", "application/json");
        exchange.sendResponseHeaders(200, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
