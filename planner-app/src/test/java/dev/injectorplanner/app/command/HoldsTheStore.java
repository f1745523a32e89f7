package dev.injectorplanner.app.command;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import java.io.IOException;
import java.nio.file.Path;

/** Another process that has the store until its standard input ends. */
final class HoldsTheStore {
    private HoldsTheStore() {}

    public static void main(String[] args) throws IOException {
        try (Store store = Store.open(StoreSettings.embedded(Path.of(args[0])))) {
            System.out.println("open");
            while (System.in.read() >= 0) {
                // held meanwhile
            }
        }
    }
}
