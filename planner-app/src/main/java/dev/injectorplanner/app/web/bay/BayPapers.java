package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.CylinderLabel;
import dev.injectorplanner.reports.bay.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** Bay sheet and cylinder labels on paper. */
@Controller
class BayPapers {
    private final BayDesk desk;

    BayPapers(BayDesk desk) {
        this.desk = desk;
    }

    @GetMapping("/bay/{truck}/sheet.pdf")
    ResponseEntity<byte[]> sheet(@ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name)
            throws IOException {
        BaySheet sheet = desk.truck(viewer, name).sheet();
        if (sheet == null) {
            throw BayDesk.notThere();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Paper.baySheets(List.of(sheet), out);
        return pdf("bay-sheet-" + name + "-" + sheet.week() + ".pdf", out.toByteArray());
    }

    /** Labels of the injectors in a truck's kit, by cylinder; there are none until it has one. */
    @GetMapping("/bay/{truck}/labels.pdf")
    ResponseEntity<byte[]> labels(@ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name)
            throws IOException {
        TruckInBay at = desk.truck(viewer, name);
        if (at.kit().isEmpty()) {
            throw BayDesk.notThere();
        }
        List<CylinderLabel> labels = at.kit().entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey()))
                .map(entry -> label(at, entry.getKey(), entry.getValue()))
                .toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Paper.labels(labels, out);
        return pdf("labels-" + name + ".pdf", out.toByteArray());
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

    private static ResponseEntity<byte[]> pdf(String name, byte[] bytes) {
        String plain = name.replaceAll("[^A-Za-z0-9._-]", "_");
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline().filename(plain).build().toString())
                .body(bytes);
    }
}
