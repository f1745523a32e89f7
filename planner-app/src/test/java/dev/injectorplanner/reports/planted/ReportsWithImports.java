package dev.injectorplanner.reports.planted;

import dev.injectorplanner.imports.cell.DateOrder;

/** Breaks a rule on purpose: knows the imports. */
public final class ReportsWithImports {
    DateOrder order() {
        return DateOrder.DAY_FIRST;
    }
}
