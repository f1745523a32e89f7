package dev.injectorplanner.app.web.imports;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.util.FileSystemUtils;
import org.springframework.web.multipart.MultipartFile;

/** Files that wait for their match, in folders of their own; each is its owner's, and a restart forgets them. */
final class MatchFiles {
    private static final int MOST = 5; // of one owner

    private final SecureRandom random = new SecureRandom();
    private final Map<String, Waiting> waiting = new LinkedHashMap<>();
    private final Map<String, Waiting> held = new HashMap<>(); // being loaded

    private record Waiting(Path file, String owner) {}

    /** @return the key under which it is kept */
    synchronized String keep(MultipartFile given, String owner) throws IOException {
        Path folder = Files.createTempDirectory("planner-match");
        Path file = folder.resolve(Uploads.name(String.valueOf(given.getOriginalFilename())));
        given.transferTo(file);
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        waiting.put(key, new Waiting(file, owner));
        List<String> ofOwner = waiting.entrySet().stream()
                .filter(each -> each.getValue().owner().equals(owner))
                .map(Map.Entry::getKey)
                .toList();
        for (String oldest : ofOwner.subList(0, Math.max(0, ofOwner.size() - MOST))) {
            hold(oldest);
            release(oldest);
        }
        return key;
    }

    /** The file as one that was sent, in its folder. */
    static Uploads.Taken taken(Path file) {
        return new Uploads.Taken(Objects.requireNonNull(file.toAbsolutePath().getParent()), List.of(file));
    }

    /** Takes a file out of those that wait; it stays on the disk until it is released. */
    synchronized void hold(String key) {
        Waiting gone = waiting.remove(key);
        if (gone != null) {
            held.put(key, gone);
        }
    }

    /** Deletes a file that was loaded, with its folder and the refused rows beside it. */
    void release(String key) {
        Waiting gone;
        synchronized (this) {
            gone = held.remove(key);
        }
        if (gone != null) {
            try {
                FileSystemUtils.deleteRecursively(taken(gone.file()).folder());
            } catch (IOException e) {
                throw new UncheckedIOException("cannot remove the file that was sent, " + gone.file(), e);
            }
        }
    }

    synchronized Optional<Path> find(String key, String owner) {
        return Optional.ofNullable(waiting.get(key))
                .filter(each -> each.owner().equals(owner) && Files.exists(each.file()))
                .map(Waiting::file);
    }
}
