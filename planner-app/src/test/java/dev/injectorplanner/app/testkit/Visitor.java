package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.PasswordHashing;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.app.store.Store;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Somebody with a browser's cookies: nobody, or one of the four people that every application of the kit has. */
public final class Visitor {
    /** The password of all four. */
    public static final String PASSWORD = "four test people share it";

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final String HASH = new Pbkdf2Hashing().hash(PASSWORD);

    private static final int MOST_ASKED = 20;

    private final URI address;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(cookies).build();

    private Visitor(URI address) {
        this.address = address;
    }

    /** Who has not signed in. */
    public static Visitor nobody(URI address) {
        return new Visitor(address);
    }

    /** Signed in as the person with this role; the mechanic works at {@link Database#NORTH}. */
    public static Visitor as(Role role, URI address) throws IOException, InterruptedException {
        return as(name(role), PASSWORD, address);
    }

    /** Signed in by name and password. */
    public static Visitor as(String name, String password, URI address) throws IOException, InterruptedException {
        Visitor visitor = new Visitor(address);
        HttpResponse<String> answer = visitor.signIn(name, password);
        String to = answer.headers().firstValue("Location").orElse("");
        if (answer.statusCode() != 302 || to.contains("/sign-in?")) {
            throw new IllegalStateException(name + " cannot sign in: " + answer.statusCode() + " " + to);
        }
        return visitor;
    }

    /** The name that the person with a role signs in with. */
    public static String name(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    /** Adds the four people. */
    public static void addAll(Store store) {
        addAll(store, Database.NORTH);
    }

    /** The same, the mechanic at another depot; without one there is no mechanic. */
    public static void addAll(Store store, @Nullable String home) {
        People people = new People(store.dataSource(), new HashedOnce());
        for (Role role : Role.values()) {
            if (role != Role.MECHANIC || home != null) {
                String depot = role == Role.MECHANIC ? home : null;
                people.add(new NewPerson(name(role), Set.of(role), depot), PASSWORD, false, "test kit");
            }
        }
    }

    public HttpResponse<String> signIn(String name, String password) throws IOException, InterruptedException {
        return post("/sign-in", "/sign-in", Map.of("name", name, "password", password));
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address.resolve(path)).header("Accept", "text/html, */*;q=0.1"));
    }

    /** A file, asked for again while the answer is the page that says how far it is, as a browser does. */
    public HttpResponse<byte[]> file(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(address.resolve(path)).build();
        HttpResponse<byte[]> answer = client.send(request, BodyHandlers.ofByteArray());
        for (int asked = 1; answer.statusCode() == 202 && asked < MOST_ASKED; asked++) {
            answer = client.send(request, BodyHandlers.ofByteArray()); // each waits some seconds for the file
        }
        return answer;
    }

    /** Sends a form with the hidden token of a page that has one. */
    public HttpResponse<String> post(String page, String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        return postBare(path, "_csrf=" + encoded(csrf(page)) + "&" + form(fields));
    }

    /** Sends a form as it is. */
    public HttpResponse<String> postBare(String path, String form) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address.resolve(path))
                .header("Accept", "text/html, */*;q=0.1")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form)));
    }

    /** Sends a form by another method. */
    public HttpResponse<String> sendBare(String method, String path, String form)
            throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address.resolve(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .method(method, BodyPublishers.ofString(form)));
    }

    public HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** The hidden token of a page's forms. */
    public String csrf(String page) throws IOException, InterruptedException {
        String html = get(page).body();
        Matcher token = TOKEN.matcher(html);
        if (!token.find()) {
            throw new IllegalStateException(page + " has no form with a token:\n" + html);
        }
        return token.group(1);
    }

    /** The session's cookie, or empty. */
    public String session() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("planner_session"))
                .map(cookie -> cookie.getValue())
                .findFirst()
                .orElse("");
    }

    /** A page without the one script that every frame brings: any other would be somebody's own. */
    public static String withoutOwnScript(String page) {
        return page.replace("<script src=\"/find.js\" defer></script>", "");
    }

    public static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** Hashing is slow on purpose; the kit hashes its one password once. */
    private static final class HashedOnce implements PasswordHashing {
        @Override
        public String hash(CharSequence password) {
            return HASH;
        }

        @Override
        public boolean matches(CharSequence password, String hash) {
            return PASSWORD.contentEquals(password);
        }

        @Override
        public boolean isOld(String hash) {
            return false;
        }
    }
}
