package dev.injectorplanner.app.drop;

import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Loads what is put into a folder and moves it on. Good rows are stored; a file with refused rows goes to {@code refused}
 * with them beside it. Several nodes may watch one folder. A node that dies while it loads loses nothing: its files are
 * loaded again by another, and loading twice changes nothing.
 */
public final class DropFolder {
    private static final Logger LOG = LoggerFactory.getLogger(DropFolder.class);

    private final Intake intake;
    private final DropSettings settings;
    private final String node;
    private final Clock clock;
    private final SettledFiles settling;

    /** @param node a name that no other running node has */
    public DropFolder(Intake intake, DropSettings settings, String node, Clock clock) {
        this.intake = intake;
        this.settings = settings;
        this.node = node.replaceAll("[^\\p{L}\\p{N}_-]+", "-");
        this.clock = clock;
        this.settling = new SettledFiles(settings.settled(), settings.deadAfter());
    }

    /** One look at the folder. Remembers sizes from look to look, so keep one object for one folder. */
    public List<DropResult> pass() {
        return pass(LoadListener.SILENT);
    }

    /** The same, while somebody hears how far it is. */
    public List<DropResult> pass(LoadListener heard) {
        try {
            Files.createDirectories(settings.folder());
            TakenFolder taken = new TakenFolder(settings.taken(), node);
            taken.beat(clock.instant());
            List<DropResult> all = new ArrayList<>();
            List<Path> mine = new ArrayList<>(taken.takeBack(clock.instant(), settings.deadAfter()));
            for (Path each : listed()) {
                look(each, taken, mine, all);
            }
            all.addAll(load(mine, taken, heard));
            taken.close();
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException("the drop folder " + settings.folder() + " cannot be used", e);
        }
    }

    private List<Path> listed() throws IOException {
        Set<Path> own = Set.of(settings.taken(), settings.done(), settings.refused());
        try (Stream<Path> files = Files.list(settings.folder())) {
            return files.filter(file -> !own.contains(file)).sorted().toList();
        }
    }

    private void look(Path file, TakenFolder taken, List<Path> mine, List<DropResult> all) throws IOException {
        String name = String.valueOf(file.getFileName());
        try {
            BasicFileAttributes what = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!what.isRegularFile()) {
                String kind = what.isSymbolicLink() ? "a link" : what.isDirectory() ? "a folder" : "no file";
                all.add(new DropResult(
                        name,
                        Outcome.IGNORED,
                        name + " is " + kind + " and is ignored. Fix: put the file itself here.",
                        file,
                        null));
                return;
            }
            String waiting = settling.look(file, clock.instant());
            if (!waiting.isEmpty()) {
                all.add(new DropResult(
                        name, Outcome.WAITING, name + " is not complete yet: " + waiting + ".", file, null));
                return;
            }
            taken.take(file).ifPresent(mine::add);
            settling.forget(file);
        } catch (NoSuchFileException e) {
            settling.forget(file); // another node has it
        }
    }

    /** All together, so that files may refer to one another whatever their order. */
    private List<DropResult> load(List<Path> mine, TakenFolder taken, LoadListener heard) throws IOException {
        if (mine.isEmpty()) {
            return List.of();
        }
        Map<Path, Long> sizes = new HashMap<>();
        for (Path file : mine) {
            sizes.put(file, Files.size(file));
        }
        LOG.info("Drop folder: loading {} files", mine.size());
        List<FileReport> reports = intake.load(mine, LoadSettings.of(Mode.GOOD_ROWS), new Beating(taken, heard));
        List<DropResult> all = new ArrayList<>();
        for (FileReport report : reports) {
            all.add(moved(report, sizes.getOrDefault(report.file(), -1L)));
        }
        return all;
    }

    private DropResult moved(FileReport report, long sizeBefore) throws IOException {
        Path file = report.file();
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) != sizeBefore) {
                Path again =
                        Files.move(file, FreeName.reserve(settings.folder(), name), StandardCopyOption.ATOMIC_MOVE);
                return new DropResult(
                        name,
                        Outcome.WAITING,
                        name + " changed while it was being read and is read again.",
                        again,
                        report);
            }
            return new FileRouting(settings).move(report);
        } catch (NoSuchFileException e) {
            return new DropResult(
                    name,
                    Outcome.ELSEWHERE,
                    name + " was taken over by another node because this one did not respond for too long.",
                    file,
                    report);
        }
    }

    /** Signs of life while a long file is loaded. */
    private final class Beating implements LoadListener {
        private final TakenFolder taken;
        private final LoadListener heard;

        Beating(TakenFolder taken, LoadListener heard) {
            this.taken = taken;
            this.heard = heard;
        }

        @Override
        public void starting(Path file, long rows) {
            beat();
            heard.starting(file, rows);
        }

        @Override
        public void refused(Path file, long rows) {
            heard.refused(file, rows);
        }

        @Override
        public void done(Path file, long rows) {
            beat();
            heard.done(file, rows);
        }

        @Override
        public void stopIfAsked() {
            heard.stopIfAsked();
        }

        @Override
        public void finished(FileReport report) {
            heard.finished(report);
        }

        private void beat() {
            try {
                taken.beat(clock.instant());
            } catch (IOException e) {
                LOG.warn("Could not renew the claim on {}", settings.taken(), e);
            }
        }
    }
}
