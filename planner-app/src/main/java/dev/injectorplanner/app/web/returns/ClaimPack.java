package dev.injectorplanner.app.web.returns;

import dev.injectorplanner.app.order.SupplierContact;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.reports.paper.PaperDocument;
import dev.injectorplanner.reports.paper.PaperDocument.Column;
import dev.injectorplanner.reports.paper.PaperDocument.Field;
import dev.injectorplanner.reports.paper.PaperDocument.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A warranty claim as one document: unit, dates, meters, codes, tests, what is lacking. */
final class ClaimPack {
    private final WarrantyClaim claim;
    private final FittedInjector unit;
    private final Optional<UnitReturn> sent;
    private final SupplierContact contact;
    private final String site;
    private final SiteForm form;
    private final SiteUnits units;

    ClaimPack(
            WarrantyClaim claim,
            FittedInjector unit,
            Optional<UnitReturn> sent,
            SupplierContact contact,
            String site,
            SiteForm form) {
        this.claim = claim;
        this.unit = unit;
        this.sent = sent;
        this.contact = contact;
        this.site = site;
        this.form = form;
        this.units = form.units();
    }

    PaperDocument document() {
        List<String> to = new ArrayList<>(List.of(claim.supplier()));
        to.addAll(contact.address().lines().toList());
        BigDecimal amount = sent.map(UnitReturn::amount).orElse(claim.value());
        String number = sent.map(UnitReturn::document).orElse("(draft)");
        List<Field> fields = new ArrayList<>();
        sent.ifPresent(row -> {
            fields.add(new Field("Sent on", DisplayFormat.shortDate(row.sentOn())));
            fields.add(new Field("Sent by", row.sentBy()));
        });
        if (!contact.customerNumber().isEmpty()) {
            fields.add(new Field("Customer number", contact.customerNumber()));
        }
        fields.add(new Field(form.money("Amount claimed"), DisplayFormat.cents(amount)));
        List<Section> sections = new ArrayList<>(List.of(
                unit(),
                evidence("Fault codes before it came out", claim.faultCodes()),
                evidence("Tests before it came out", claim.tests())));
        if (sent.isEmpty()) {
            sections.add(lacking()); // a draft: for us, not for the supplier
        }
        return new PaperDocument(
                "Warranty claim",
                number,
                to,
                List.of(site, claim.depot()),
                fields,
                sections,
                "Warranty claim, truck " + claim.truck() + ", cylinder " + claim.cylinder() + ", " + site);
    }

    private Section unit() {
        Double km = claim.km();
        List<List<String>> rows = List.of(
                List.of("Part", claim.part()),
                List.of("Serial", claim.serial() == null ? "not on record" : claim.serial()),
                List.of("Truck", claim.truck() + ", VIN " + claim.vin()),
                List.of("Cylinder", String.valueOf(claim.cylinder())),
                List.of(
                        "Fitted",
                        DisplayFormat.shortDate(claim.fittedOn()) + meter(unit.odometerKm(), unit.engineHours())),
                List.of(
                        "Failed and removed",
                        DisplayFormat.shortDate(claim.removedOn())
                                + meter(unit.removedOdometerKm(), unit.removedEngineHours())),
                List.of(
                        "In service",
                        Figures.count(claim.months(), "month", "months") + (km == null ? "" : ", " + distance(km))),
                List.of("Warranty", warranty()));
        return new Section(
                "The unit", List.of(), List.of(Column.text(""), Column.text("")), rows, List.of(), List.of());
    }

    private String meter(@Nullable Double km, @Nullable Double hours) {
        return (km == null ? "" : ", odometer " + distance(km))
                + (hours == null ? "" : ", " + Figures.whole(hours) + " engine hours");
    }

    private String distance(double km) {
        return Figures.whole(units.ofKm(km)) + " " + units.distanceUnit();
    }

    private String warranty() {
        List<String> limits = new ArrayList<>();
        if (claim.warrantyMonths() > 0) {
            limits.add(Figures.count(claim.warrantyMonths(), "month", "months"));
        }
        if (claim.warrantyKm() > 0) {
            limits.add(distance(claim.warrantyKm()));
        }
        return String.join(" or ", limits) + (limits.size() > 1 ? ", whichever comes first" : "");
    }

    private Section evidence(String title, List<String> lines) {
        return Section.said(
                title,
                lines.isEmpty()
                        ? List.of("None on record.")
                        : lines.stream().map(units::sentence).toList());
    }

    private Section lacking() {
        return Section.said(
                "What is lacking",
                claim.lacking().isEmpty()
                        ? List.of("Nothing: all that is usually asked for is here.")
                        : List.of(
                                "Not on record: " + String.join(", ", claim.lacking()) + ".",
                                "Add it before the claim goes out, or say why there is none."));
    }
}
