package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.Store;
import java.nio.file.Path;
import java.util.List;

/** Loads a file and says on standard output how many rows are stored for good; made to be killed. */
final class LoadInAnotherProcess {
    private LoadInAnotherProcess() {}

    public static void main(String[] args) {
        try (Store store = Store.open(KilledProcess.store(args))) {
            System.out.println("open");
            new Intake(store).load(List.of(Path.of(args[3])), LoadSettings.of(Mode.GOOD_ROWS), new LoadListener() {
                @Override
                public void done(Path file, long rows) {
                    System.out.println(rows);
                    System.out.flush();
                }
            });
        }
    }
}
