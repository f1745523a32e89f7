package dev.injectorplanner.app.drop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipFile;

/** Tells a file that is whole from one that is still being written. */
final class SettledFiles {
    /** Names that programs give to files they have not finished: common practice. */
    private static final Set<String> HALF = Set.of(".part", ".partial", ".tmp", ".temp", ".filepart", ".crdownload");

    private final Duration settled;
    private final Duration patience;
    private final Map<Path, Look> looks = new HashMap<>();

    /** @param patience a workbook that is no whole zip after so long will not become one */
    SettledFiles(Duration settled, Duration patience) {
        this.settled = settled;
        this.patience = patience;
    }

    private record Look(long size, Instant modified, Instant since) {}

    /**
     * Looks at a file once more.
     *
     * @return the empty text where it is whole, else what it is waited for
     */
    String look(Path file, Instant now) throws IOException {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.startsWith(".") || name.startsWith("~$") || HALF.stream().anyMatch(name::endsWith)) {
            return "its name marks it as unfinished";
        }
        BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        Instant modified = seen.lastModifiedTime().toInstant();
        Look before = looks.get(file);
        Instant since = modified;
        if (before != null && before.size() == seen.size() && before.modified().equals(modified)) {
            since = earlier(modified, before.since());
        } else {
            looks.put(file, new Look(seen.size(), modified, now));
            if (before != null) {
                return "it is still growing";
            }
        }
        Duration quiet = Duration.between(since, now);
        if (quiet.compareTo(settled) < 0) {
            return "it changed less than " + settled.toSeconds() + " s ago";
        }
        if (name.endsWith(".xlsx") && quiet.compareTo(patience) < 0 && !isWholeZip(file)) {
            return "the workbook is not complete yet";
        }
        return "";
    }

    void forget(Path file) {
        looks.remove(file);
    }

    /** A clock that runs ahead on the writer's machine must not keep a file waiting: then our own first look counts. */
    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    /** The directory of a zip is its end: a half copied one has none. */
    private static boolean isWholeZip(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return zip.size() > 0;
        } catch (IOException e) {
            return false;
        }
    }
}
