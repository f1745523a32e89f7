package dev.injectorplanner.app.store;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * How a PostgreSQL store is backed up and restored: with the database's own tools, while the server runs. They ask for the
 * password, or take it from the environment (PGPASSWORD) or the user's password file.
 *
 * @param backup the command that copies the database to a file
 * @param restore the commands that bring the file back as a new database, in their order: whole or not at all
 * @param serve the command that starts the program on the restored database
 */
public record DatabaseTools(String backup, List<String> restore, String serve) {
    private static final String FILE = "planner.dump";

    public DatabaseTools {
        restore = List.copyOf(restore);
    }

    /** @param settings of a PostgreSQL store */
    public static DatabaseTools of(StoreSettings settings) {
        String place = settings.place(); // jdbc:postgresql://host:port/name, or jdbc:postgresql:name on this machine
        String name = URLDecoder.decode(
                place.substring(Math.max(place.lastIndexOf('/'), place.lastIndexOf(':')) + 1), StandardCharsets.UTF_8);
        String hosts = place.contains("//")
                ? place.substring(place.indexOf("//") + 2, Math.max(place.lastIndexOf('/'), place.indexOf("//") + 2))
                : "localhost";
        String restored = name + "_restored";
        String server =
                "postgresql://" + (settings.user().isEmpty() ? "" : escaped(settings.user()) + "@") + hosts + "/";
        String database = quoted(server + escaped(name));
        return new DatabaseTools(
                "pg_dump --format=custom --file=" + FILE + " " + database,
                List.of(
                        "createdb --maintenance-db=" + database + " " + quoted(restored),
                        "pg_restore --exit-on-error --single-transaction --no-owner --dbname="
                                + quoted(server + escaped(restored)) + " " + FILE),
                "java -jar planner.jar serve --database "
                        + quoted("jdbc:postgresql://" + hosts + "/" + escaped(restored)));
    }

    private static String escaped(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** Quoted where a shell would read more than a word in it. */
    private static String quoted(String text) {
        return text.matches("[A-Za-z0-9_@%:/.,+=\\[\\]-]*") ? text : "'" + text.replace("'", "'\\''") + "'";
    }
}
