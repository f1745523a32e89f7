package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.Store;

/** Closes out one truck after the other and says on standard output which are kept for good; made to be killed. */
final class CloseOutInAnotherProcess {
    private CloseOutInAnotherProcess() {}

    public static void main(String[] args) {
        try (Store store = Store.open(KilledProcess.store(args))) {
            CloseOuts closeOuts = new CloseOuts(store);
            System.out.println("open");
            for (String truck : DemoStore.trucksWithEight(store.snapshot())) {
                closeOuts.close(DemoStore.allEight("killed " + truck, truck), DemoStore.NOW, "Ilze", DemoStore.TODAY);
                System.out.println(truck);
                System.out.flush();
            }
        }
    }
}
