package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FaultCode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What a diagnosis visit looks for, by the codes of its safety faults: a leak before a pressure. */
record Diagnoses(Set<DiagnosisKind> kinds) {
    static Diagnoses of(List<DueItem> dueItems) {
        Set<DiagnosisKind> kinds = EnumSet.noneOf(DiagnosisKind.class);
        for (DueItem item : dueItems) {
            String code = item.faultCode();
            if (code != null) {
                DiagnosisKind.of(new FaultCode(code)).ifPresent(kinds::add);
            }
        }
        return new Diagnoses(kinds);
    }

    /** The steps of all of them, each once. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        kinds.forEach(kind -> kind.steps().forEach(step -> lines.add(step.title() + ": " + step.how())));
        return lines;
    }
}
