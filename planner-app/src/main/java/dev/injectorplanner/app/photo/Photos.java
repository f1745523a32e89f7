package dev.injectorplanner.app.photo;

import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.Require;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Photographs of a truck's visits, up to six each, within the store and its backup. */
public final class Photos {
    /** Photographs of one visit at most. */
    public static final int MOST = 6;

    /** Bytes of a file that is looked at, at most. */
    public static final int MOST_BYTES = SmallPicture.MOST_BYTES;

    private static final int LONGEST_NOTE = 200;
    private static final String COLUMNS =
            "select id, truck, visit, cylinder, note, width, height, taken_at, taken_by from bay_photo where ";

    private final Store store;

    public Photos(Store store) {
        this.store = store;
    }

    /**
     * A photograph as it was sent.
     *
     * @param formKey names the form: sent twice, it is kept once
     * @param file JPEG or PNG
     */
    public record Taken(
            String formKey,
            String truck,
            String visit,
            @Nullable Integer cylinder,
            String note,
            byte[] file) {}

    /**
     * Keeps a photograph, made small and without anything but its picture.
     *
     * @throws RefusedEntryException where it cannot be read, is too large, or the visit has six already
     */
    public void add(Taken taken, Instant at, String by) {
        String note = checked(taken);
        SmallPicture small = SmallPicture.of(taken.file());
        store.inJointTransaction((connection, writer) -> {
            StoreSql.update(connection, "update workshop_gate set turn = turn + 1 where id = 1");
            new KnownFleet(writer).truck(taken.truck());
            boolean sent = !StoreSql.list(connection, COLUMNS + "form_key = ?", Photos::read, taken.formKey())
                    .isEmpty();
            if (sent) {
                return true;
            }
            requireRoom(connection, taken);
            insert(connection, taken, note, small, at, by);
            AuditTrail.write(connection, at, by, "add a photograph", taken.truck(), "", taken.visit() + " " + note);
            return true;
        });
    }

    private static void requireRoom(Connection connection, Taken taken) throws SQLException {
        int there = StoreSql.list(
                        connection, COLUMNS + "truck = ? and visit = ?", Photos::read, taken.truck(), taken.visit())
                .size();
        if (there >= MOST) {
            throw RefusedEntryException.of(
                    "photo", "this visit has " + MOST + " photographs already", "remove one first");
        }
    }

    private static void insert(
            Connection connection, Taken taken, String note, SmallPicture small, Instant at, String by)
            throws SQLException {
        StoreSql.update(
                connection,
                "insert into bay_photo (id, form_key, truck, visit, cylinder, note, width, height, taken_at, taken_by,"
                        + " jpeg_base64) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                StoreSql.nextIds(connection, "bay_photo_seq"),
                taken.formKey(),
                taken.truck(),
                taken.visit(),
                taken.cylinder(),
                note,
                small.width(),
                small.height(),
                at,
                by,
                Base64.getEncoder().encodeToString(small.jpeg()));
    }

    private static String checked(Taken taken) {
        if (taken.formKey().isBlank() || taken.formKey().length() > 100) {
            throw RefusedEntryException.of("photo", "the form's key is missing or damaged", "open the page again");
        }
        String note = Require.text("note", taken.note());
        if (note.length() > LONGEST_NOTE) {
            throw RefusedEntryException.of(
                    "photo", "the remark is too long", "keep it to " + LONGEST_NOTE + " characters");
        }
        return note;
    }

    /** A truck's, the newest first. */
    public List<Photo> ofTruck(String truck) {
        return store.inJointTransaction((connection, writer) ->
                StoreSql.list(connection, COLUMNS + "truck = ? order by taken_at desc, id desc", Photos::read, truck));
    }

    /** Those of one visit, in the order in which they were taken. */
    public List<Photo> ofVisit(String truck, String visit) {
        return store.inJointTransaction((connection, writer) -> StoreSql.list(
                connection, COLUMNS + "truck = ? and visit = ? order by taken_at, id", Photos::read, truck, visit));
    }

    /** The picture, JPEG. */
    public Optional<byte[]> findPicture(String truck, long id) {
        return store.inJointTransaction((connection, writer) -> StoreSql.list(
                        connection,
                        "select jpeg_base64 from bay_photo where truck = ? and id = ?",
                        row -> Base64.getDecoder().decode(row.getString(1)),
                        truck,
                        id)
                .stream()
                .findFirst());
    }

    /** Removes one that was taken by mistake. */
    public void remove(String truck, long id, Instant at, String by) {
        store.inJointTransaction((connection, writer) -> {
            int gone = StoreSql.update(connection, "delete from bay_photo where truck = ? and id = ?", truck, id);
            if (gone > 0) {
                AuditTrail.write(connection, at, by, "remove a photograph", truck, "photograph " + id, "");
            }
            return gone;
        });
    }

    private static Photo read(ResultSet row) throws SQLException {
        return new Photo(
                row.getLong("id"),
                row.getString("truck"),
                row.getString("visit"),
                row.getObject("cylinder", Integer.class),
                row.getString("note"),
                row.getInt("width"),
                row.getInt("height"),
                StoreSql.moment(row, "taken_at"),
                row.getString("taken_by"));
    }
}
