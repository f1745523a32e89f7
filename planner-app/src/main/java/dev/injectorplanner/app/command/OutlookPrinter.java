package dev.injectorplanner.app.command;

import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.Month;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** An outlook on the terminal, or as JSON. */
final class OutlookPrinter {
    private final PrintWriter out;
    private final SiteForm form;
    private final SiteUnits units;

    /** @param form of the site; JSON stays in litres */
    OutlookPrinter(PrintWriter out, SiteForm form) {
        this.out = out;
        this.form = form;
        this.units = form.units();
    }

    void print(Outlook outlook) {
        if (outlook.runs() == 0) {
            out.println("Stopped before a run was finished: there is nothing to show.");
            out.flush();
            return;
        }
        out.printf(
                Locale.ROOT,
                "Outlook from %s, %,d runs%s: median, and in brackets what eight runs in ten stay within%n%n",
                outlook.today(),
                outlook.runs(),
                outlook.stopped() ? " (stopped before its end)" : "");
        months(outlook.months());
        out.println();
        out.println("Pieces by part");
        parts(outlook);
        List<String> depots =
                outlook.depots().stream().map(Month::depot).distinct().toList();
        if (depots.size() > 1) {
            for (String depot : depots) {
                out.println();
                out.println(depot);
                months(outlook.monthsOf(depot));
            }
        }
        notes(outlook);
        out.flush();
    }

    private void months(List<Month> months) {
        TextTable table = new TextTable(
                "Month",
                ">Injectors",
                ">Failures",
                ">Trucks in",
                ">Hours",
                ">Coolant " + units.volumeUnit(),
                form.money(">Cost"));
        for (Month month : months) {
            table.row(
                    month.month(),
                    band(month.injectors(), value -> value),
                    band(month.failures(), value -> value),
                    band(month.visits(), value -> value),
                    band(month.hours(), value -> value),
                    band(month.coolantLitres(), units::ofLitres),
                    band(month.money(), value -> value));
        }
        table.print(out);
    }

    private void parts(Outlook outlook) {
        List<String> months =
                outlook.months().stream().map(month -> month.month().toString()).toList();
        String[] headings = new String[months.size() + 1];
        headings[0] = "Part";
        for (int m = 0; m < months.size(); m++) {
            headings[m + 1] = ">" + months.get(m);
        }
        TextTable table = new TextTable(headings);
        Map<String, Object[]> rows = new LinkedHashMap<>();
        for (PartMonth row : outlook.partsOf(null)) {
            Object[] cells = rows.computeIfAbsent(row.part(), part -> new Object[headings.length]);
            cells[0] = row.part();
            cells[1 + months.indexOf(row.month().toString())] = band(row.pieces(), value -> value);
        }
        rows.values().forEach(table::row);
        table.print(out);
    }

    private void notes(Outlook outlook) {
        out.println();
        out.println("The plan's visits are carried out to " + outlook.planEnds() + "; after that, by rule: "
                + units.sentence(outlook.rules()));
        if (!outlook.leftOut().isEmpty()) {
            out.println("Not counted, since their usage or the part of their injectors is not known: "
                    + String.join(", ", outlook.leftOut()));
        }
        if (outlook.assumedAges() > 0) {
            out.println(outlook.assumedAges() + " injectors of unknown age are taken to be as old as the others.");
        }
        out.println("Trucks that join the fleet later are not in it.");
    }

    private static String band(Band band, DoubleUnaryOperator shown) {
        return String.format(
                Locale.ROOT,
                "%,.0f [%,.0f, %,.0f]",
                shown.applyAsDouble(band.median()),
                shown.applyAsDouble(band.low()),
                shown.applyAsDouble(band.high()));
    }

    void json(Outlook outlook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("today", outlook.today().toString());
        json.put("planEnds", outlook.planEnds().toString());
        json.put("runs", outlook.runs());
        json.put("stopped", outlook.stopped());
        json.put("rules", outlook.rules());
        json.put("leftOut", outlook.leftOut());
        json.put("assumedAges", outlook.assumedAges());
        json.put("months", outlook.months().stream().map(OutlookPrinter::row).toList());
        json.put("depots", outlook.depots().stream().map(OutlookPrinter::row).toList());
        json.put("parts", outlook.parts().stream().map(OutlookPrinter::row).toList());
        Json.print(out, json);
    }

    private static Map<String, Object> row(Month month) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("month", month.month().toString());
        if (month.depot() != null) {
            row.put("depot", month.depot());
        }
        row.put("injectors", month.injectors());
        row.put("failures", month.failures());
        row.put("visits", month.visits());
        row.put("hours", month.hours());
        row.put("coolantLitres", month.coolantLitres());
        row.put("money", month.money());
        return row;
    }

    private static Map<String, Object> row(PartMonth part) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("month", part.month().toString());
        if (part.depot() != null) {
            row.put("depot", part.depot());
        }
        row.put("part", part.part());
        row.put("pieces", part.pieces());
        return row;
    }
}
