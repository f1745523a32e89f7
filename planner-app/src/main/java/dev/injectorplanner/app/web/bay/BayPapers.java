package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.CylinderLabel;
import dev.injectorplanner.reports.bay.LabelForm;
import dev.injectorplanner.reports.bay.Paper;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;

/** Bay sheet and cylinder labels on paper. */
@Controller
class BayPapers {
    private final BayDesk desk;
    private final Downloads downloads;

    /**
     * What a paper is of: what is printed on it.
     *
     * @param printed sheet or labels
     */
    private record Printed(String name, PaperSize size, List<?> printed) {}

    BayPapers(BayDesk desk, Downloads downloads) {
        this.desk = desk;
        this.downloads = downloads;
    }

    /** Prints the sheet within a page as its PDF. */
    @GetMapping(path = "/bay-paper.css", produces = "text/css")
    @ResponseBody
    String style() {
        return Paper.style(".paper-only");
    }

    @GetMapping("/bay/{truck}/sheet.pdf")
    Object sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            HttpServletResponse response,
            Model model) {
        BaySheet sheet = desk.truck(viewer, name).sheet();
        if (sheet == null) {
            throw BayDesk.notThere();
        }
        List<BaySheet> sheets = List.of(sheet);
        PaperSize size = desk.paper();
        return downloads.answer(
                new Printed(name, size, sheets),
                (progress, out) -> {
                    progress.step("writing the bay sheet");
                    Paper.baySheets(sheets, size, out);
                },
                FileOffer.pdf("bay-sheet-" + name + "-" + sheet.week() + ".pdf", BayAddresses.bay(name)),
                response,
                model);
    }

    /** Labels of the injectors in a truck's kit, by cylinder; there are none until it has one. */
    @GetMapping({"/bay/{truck}/labels.pdf", "/store/labels/{truck}.pdf"})
    Object labels(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "form", required = false) @Nullable String form,
            HttpServletResponse response,
            Model model) {
        PaperSize size = desk.paper();
        LabelForm on = form == null ? LabelForm.on(size) : LabelForm.of(form);
        TruckInBay at = desk.truck(viewer, name);
        if (at.kit().isEmpty()) {
            throw BayDesk.notThere();
        }
        List<CylinderLabel> labels = at.kit().entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey()))
                .map(entry -> label(at, entry.getKey(), entry.getValue()))
                .toList();
        return downloads.answer(
                new Printed(name + " " + on.key(), size, labels),
                (progress, out) -> {
                    progress.step("writing the labels");
                    Paper.labels(labels, on, out);
                },
                FileOffer.pdf("labels-" + name + ".pdf", BayAddresses.bay(name)),
                response,
                model);
    }

    private static CylinderLabel label(TruckInBay at, int cylinder, StockInjector injector) {
        BaySheet sheet = at.sheet();
        return new CylinderLabel(
                at.truck().truck(),
                cylinder,
                at.family().bankOf(cylinder).name(),
                injector.part(),
                injector.serial(),
                injector.code(),
                (sheet == null ? "no visit planned" : sheet.day()) + ", "
                        + at.depot().name());
    }
}
