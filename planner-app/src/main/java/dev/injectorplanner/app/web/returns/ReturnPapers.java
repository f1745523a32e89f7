package dev.injectorplanner.app.web.returns;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.order.SupplierContact;
import dev.injectorplanner.app.order.Suppliers;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.photo.Photo;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.returns.Returns;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import dev.injectorplanner.reports.paper.PaperDocument;
import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What goes with old units: the return note, and the pack of a warranty claim. */
@Controller
public class ReturnPapers {
    private static final int DAYS_BEFORE = 7;
    private static final int DAYS_AFTER = 14;

    private final Office office;
    private final Returns returns;
    private final Suppliers suppliers;
    private final SiteSettings settings;
    private final Downloads downloads;
    private final Photos photos;

    ReturnPapers(Office office, Application application, Downloads downloads) {
        this.photos = new Photos(application.store());
        this.office = office;
        this.returns = new Returns(application.store());
        this.suppliers = new Suppliers(application.store());
        this.settings = new SiteSettings(application.store().dataSource());
        this.downloads = downloads;
    }

    private record Wanted(SiteForm form, PaperDocument document) {}

    @GetMapping("/returns/notes/{document}.pdf")
    Object note(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("document") String document,
            HttpServletResponse response,
            Model model) {
        List<UnitReturn> rows = returns.list().stream()
                .filter(row -> row.document().equals(document) && row.what() == UnitReturn.What.CORE)
                .filter(row -> office.findDepotOf(viewer, row.truck()).isPresent())
                .toList();
        if (rows.isEmpty()) {
            throw new NotHereException(
                    "There is no return note \"" + document + "\". Fix: open the cores and claims and choose one.");
        }
        return answer("return-note-" + document, note(viewer, document, rows), response, model);
    }

    private Object answer(String name, PaperDocument document, HttpServletResponse response, Model model) {
        SiteForm form = office.form();
        return downloads.answer(
                new Wanted(form, document),
                (progress, out) -> {
                    progress.step("writing the document");
                    document.write(form.paper(), out);
                },
                FileOffer.pdf(name + ".pdf", "/returns"),
                response,
                model);
    }

    private PaperDocument note(Viewer viewer, String number, List<UnitReturn> rows) {
        List<List<String>> cells = new ArrayList<>();
        String supplier = "";
        BigDecimal sum = BigDecimal.ZERO;
        for (UnitReturn row : rows) {
            DepotPlan plan = plan(viewer, row.truck());
            FittedInjector fitted = fitted(plan, row);
            Part part =
                    fitted == null ? null : plan.fleet().findPart(fitted.part()).orElse(null);
            supplier = part == null ? supplier : part.supplier();
            String serial = fitted == null ? null : CoresOwed.oldSerial(plan.fleet(), fitted);
            sum = sum.add(row.amount());
            cells.add(List.of(
                    String.valueOf(cells.size() + 1),
                    fitted == null ? "" : fitted.part(),
                    part == null ? "" : part.description(),
                    serial == null ? "not on record" : serial,
                    row.truck() + ", cylinder " + row.cylinder(),
                    DisplayFormat.shortDate(row.fittedOn()),
                    DisplayFormat.cents(row.amount())));
        }
        SupplierContact contact = suppliers.of(supplier.isEmpty() ? "supplier" : supplier);
        return new PaperDocument(
                "Return note",
                number,
                to(supplier, contact),
                List.of(site()),
                fields(contact, rows.get(0), "Cores", String.valueOf(rows.size())),
                List.of(lines(number, cells, sum, office.form())),
                "Return note " + number + ", " + site());
    }

    private static PaperDocument.Section lines(String number, List<List<String>> cells, BigDecimal sum, SiteForm form) {
        return new PaperDocument.Section(
                "",
                List.of("Used injectors returned for their core deposit."),
                List.of(
                        PaperDocument.Column.figure("Line"),
                        PaperDocument.Column.code("Part"),
                        PaperDocument.Column.text("Description"),
                        PaperDocument.Column.code("Serial of the old unit"),
                        PaperDocument.Column.text("Out of"),
                        PaperDocument.Column.text("Replaced on"),
                        PaperDocument.Column.figure(form.money("Deposit"))),
                cells,
                List.of(new PaperDocument.Field(form.money("Deposits to credit"), DisplayFormat.cents(sum))),
                List.of(
                        "Please quote " + number + " on the credit note.",
                        "Drain and cap each unit before it is packed. It may still hold fuel: keep it upright and"
                                + " away from flame."));
    }

    private static List<String> to(String supplier, SupplierContact contact) {
        List<String> to = new ArrayList<>(List.of(supplier));
        to.addAll(contact.address().lines().toList());
        return to;
    }

    private static List<PaperDocument.Field> fields(
            SupplierContact contact, UnitReturn row, String label, String value) {
        List<PaperDocument.Field> fields = new ArrayList<>();
        fields.add(new PaperDocument.Field("Sent on", DisplayFormat.shortDate(row.sentOn())));
        fields.add(new PaperDocument.Field("Sent by", row.sentBy()));
        if (!contact.customerNumber().isEmpty()) {
            fields.add(new PaperDocument.Field("Customer number", contact.customerNumber()));
        }
        fields.add(new PaperDocument.Field(label, value));
        return fields;
    }

    private String site() {
        String name = settings.siteName();
        return name.isBlank() ? "Workshop" : name;
    }

    private DepotPlan plan(Viewer viewer, String truck) {
        return office.findDepotOf(viewer, truck)
                .flatMap(office::find)
                .orElseThrow(() -> new NotHereException(
                        "There is no plan with truck \"" + truck + "\". Fix: replan its depot first."));
    }

    private static @Nullable FittedInjector fitted(DepotPlan plan, UnitReturn row) {
        return plan.fleet().injectorsOf(row.truck()).stream()
                .filter(each -> each.cylinder() == row.cylinder()
                        && each.fittedOn().equals(row.fittedOn())
                        && each.fitting() == row.fitting())
                .findFirst()
                .orElse(null);
    }

    /** All a supplier asks for about one failure, and what is lacking. */
    @GetMapping("/returns/claims/{truck}.pdf")
    Object claim(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String truck,
            @RequestParam("cylinder") int cylinder,
            @RequestParam("fitted") LocalDate fitted,
            @RequestParam(name = "fitting", defaultValue = "1") int fitting,
            HttpServletResponse response,
            Model model) {
        DepotPlan plan = plan(viewer, truck);
        Truck row = plan.fleet().fleet().trucks().stream()
                .filter(each -> each.truck().equals(truck))
                .findFirst()
                .orElseThrow();
        WarrantyClaim claim = WarrantyClaims.find(plan.fleet(), row, cylinder, fitted, fitting)
                .orElseThrow(() -> new NotHereException("No injector fitted on " + fitted + " in truck " + truck
                        + ", cylinder " + cylinder + " was found failed. Fix: open the cores and claims again."));
        FittedInjector unit = plan.fleet().injectorsOf(truck).stream()
                .filter(each ->
                        each.cylinder() == cylinder && each.fittedOn().equals(fitted) && each.fitting() == fitting)
                .findFirst()
                .orElseThrow();
        Optional<UnitReturn> sent = returns.list().stream()
                .filter(each -> each.isOf(UnitReturn.What.CLAIM, truck, cylinder, fitted, fitting))
                .findFirst();
        return answer(
                "claim-" + truck + "-" + cylinder + "-" + fitted,
                new ClaimPack(claim, unit, sent, suppliers.of(claim.supplier()), site(), office.form())
                        .document()
                        .with(pictures(claim)),
                response,
                model);
    }

    /** Photographs taken around the day it came out: of its cylinder, or of no one. */
    private List<PaperDocument.Picture> pictures(WarrantyClaim claim) {
        List<PaperDocument.Picture> pictures = new ArrayList<>();
        for (Photo photo : photos.ofTruck(claim.truck())) {
            LocalDate day = LocalDate.ofInstant(photo.takenAt(), java.time.ZoneOffset.UTC);
            boolean then = !day.isBefore(claim.removedOn().minusDays(DAYS_BEFORE))
                    && !day.isAfter(claim.removedOn().plusDays(DAYS_AFTER));
            boolean its = photo.cylinder() == null || photo.cylinder() == claim.cylinder();
            if (then && its) {
                photos.findPicture(claim.truck(), photo.id())
                        .ifPresent(jpeg -> pictures.add(new PaperDocument.Picture(
                                photo.words(), Base64.getEncoder().encodeToString(jpeg))));
            }
        }
        return pictures;
    }
}
