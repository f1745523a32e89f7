package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.web.multipart.MultipartFile;

/** Files from the browser in a folder of their own, and the refused rows of the newest loads. */
final class Uploads {
    /** Bytes of a request at most. */
    static final long MOST_BYTES = 64L * 1024 * 1024;

    private static final int MOST_KEPT = 50;
    private static final int LONGEST_NAME = 100;

    private final SecureRandom random = new SecureRandom();
    private final Map<String, Path> refused = new LinkedHashMap<>();

    /** Files that were taken, in their folder. */
    record Taken(Path folder, List<Path> files) {}

    /** A file of refused rows to download. */
    record Refused(String name, String key) {}

    Taken take(List<MultipartFile> given) throws IOException {
        Map<String, MultipartFile> named = new LinkedHashMap<>();
        for (MultipartFile each : given) {
            String name = name(String.valueOf(each.getOriginalFilename()));
            if (named.putIfAbsent(name, each) != null) {
                throw new InvalidValueException("files", name, "was chosen twice", "choose each file once");
            }
        }
        Path folder = Files.createTempDirectory("planner-upload");
        Taken taken =
                new Taken(folder, named.keySet().stream().map(folder::resolve).toList());
        try {
            for (Path file : taken.files()) {
                MultipartFile each = Objects.requireNonNull(named.get(String.valueOf(file.getFileName())));
                each.transferTo(file);
            }
            return taken;
        } catch (IOException | RuntimeException e) {
            clear(taken);
            throw e;
        }
    }

    /** The last part of a path, of harmless characters: nothing in it leads out of the folder. */
    static String name(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String safe = last.replaceAll("[^\\p{L}\\p{N} ._-]+", "-")
                .replaceFirst("^[. ]+", "")
                .strip();
        String shorter = safe.length() > LONGEST_NAME ? safe.substring(safe.length() - LONGEST_NAME) : safe;
        return shorter.isEmpty() ? "file.csv" : shorter;
    }

    synchronized List<Refused> keepRefused(Taken taken, List<FileReport> reports) throws IOException {
        List<Refused> kept = new ArrayList<>();
        for (FileReport report : reports) {
            for (Path file : report.refusedRows()) {
                if (file.startsWith(taken.folder()) && Files.exists(file)) {
                    String name = String.valueOf(file.getFileName());
                    Path copy = Files.copy(
                            file, Files.createTempDirectory("planner-refused").resolve(name));
                    byte[] bytes = new byte[16];
                    random.nextBytes(bytes);
                    String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
                    refused.put(key, copy);
                    kept.add(new Refused(name, key));
                }
            }
        }
        while (refused.size() > MOST_KEPT) {
            String oldest = refused.keySet().iterator().next();
            Path file = refused.remove(oldest);
            if (file != null) {
                Files.deleteIfExists(file);
                Files.deleteIfExists(file.toAbsolutePath().getParent());
            }
        }
        return kept;
    }

    synchronized Optional<Path> findRefused(String key) {
        return Optional.ofNullable(refused.get(key));
    }

    void clear(Taken taken) {
        try {
            List<Path> files;
            try (Stream<Path> all = Files.list(taken.folder())) {
                files = all.toList();
            }
            for (Path file : files) {
                Files.delete(file);
            }
            Files.delete(taken.folder());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot remove the files that were sent, in " + taken.folder(), e);
        }
    }
}
