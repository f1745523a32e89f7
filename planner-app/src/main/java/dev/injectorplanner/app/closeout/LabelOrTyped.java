package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.stock.SerialCodes;
import dev.injectorplanner.reports.bay.CylinderLabel;
import dev.injectorplanner.reports.bay.CylinderLabel.Scanned;
import java.util.Optional;

/**
 * Serial and code as typed, or as a whole label says that was scanned into either field.
 *
 * @param usable false where the label is another place's: nothing is known of the injector then
 */
record LabelOrTyped(String serial, String code, boolean usable) {
    static LabelOrTyped of(String truck, Cylinder entry, String where, EntryProblems problems) {
        Optional<Scanned> inCode = CylinderLabel.read(entry.code());
        Optional<Scanned> inSerial = CylinderLabel.read(entry.serial());
        if (inCode.isEmpty() && inSerial.isEmpty()) {
            return new LabelOrTyped(entry.serial(), entry.code(), true);
        }
        Scanned label = inCode.or(() -> inSerial).orElseThrow();
        String field = "c" + entry.cylinder() + (inCode.isPresent() ? ".code" : ".serial");
        if (!label.truck().equals(truck) || label.cylinder() != entry.cylinder()) {
            problems.add(
                    field,
                    where + "the scanned label is for truck " + label.truck() + ", cylinder " + label.cylinder(),
                    "fit the injector labelled truck " + truck + ", cylinder " + entry.cylinder());
            return new LabelOrTyped("", "", false);
        }
        boolean typedSerial = inSerial.isEmpty() && !entry.serial().isBlank();
        if (typedSerial && !SerialCodes.serial(entry.serial()).equals(SerialCodes.serial(label.serial()))) {
            problems.add(
                    "c" + entry.cylinder() + ".serial",
                    where + "serial \"" + entry.serial().strip() + "\": the label shows " + label.serial(),
                    "read the injector again; one of the two belongs to another injector");
            return new LabelOrTyped("", "", false);
        }
        boolean typedCode = inCode.isEmpty() && !entry.code().isBlank();
        return new LabelOrTyped(label.serial(), typedCode ? entry.code() : label.calibrationCode(), true);
    }
}
