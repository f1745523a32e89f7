package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import java.util.List;

/** Sheet {@code Short list}: what an order placed today may not bring in time, and the visit that will suffer. */
final class ShortSheet {
    private final Plan plan;
    private final String remark;
    private final Descriptions descriptions;

    ShortSheet(Plan plan, String remark, Descriptions descriptions) {
        this.plan = plan;
        this.remark = remark;
        this.descriptions = descriptions;
    }

    void write(Book book) {
        SheetTable.add(
                book,
                "Short list",
                "Short list: parts that may arrive too late, and the visit affected",
                remark + ". Costs to postpone, to wait and of express are for the whole visit.",
                List.of(
                        ShortColumns.WEEK,
                        ShortColumns.DEPOT,
                        ShortColumns.TRUCK,
                        ShortColumns.PART,
                        TableColumn.wrapped("Description", 26, line -> descriptions.of(line.part())),
                        ShortColumns.MISSING,
                        TableColumn.count("Chance it is needed, %", 10, line -> Math.rint(100 * line.chance())),
                        ShortColumns.USUAL,
                        ShortColumns.LATEST,
                        ShortColumns.ADVICE,
                        ShortColumns.POSTPONING,
                        TableColumn.money("Average cost of waiting", 11, ShortLine::waitingCost),
                        ShortColumns.EXPRESS),
                plan.parts().shortList());
    }
}
