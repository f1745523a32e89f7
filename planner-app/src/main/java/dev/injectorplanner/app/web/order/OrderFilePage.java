package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.order.OrderFile;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.order.OrderPaper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One order: its lines with what can be done to them, what went wrong, what happened; as document, workbook and mail. */
@Controller
public class OrderFilePage {
    private final Office office;
    private final PurchaseOrders orders;
    private final OrderPapers papers;
    private final Downloads downloads;
    private final SiteClock clock;

    OrderFilePage(Office office, Application application, OrderPapers papers, Downloads downloads, SiteClock clock) {
        this.office = office;
        this.orders = new PurchaseOrders(application.store());
        this.papers = papers;
        this.downloads = downloads;
        this.clock = clock;
    }

    @GetMapping("/orders/{order}")
    String order(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("order") String order,
            @RequestParam(name = "said", defaultValue = "") String said,
            Model model) {
        OrderFile file = orders.file(order);
        List<PurchaseLine> lines = seen(viewer, file);
        boolean any = !lines.isEmpty()
                || (file.lines().isEmpty()
                        && (file.head().isPresent() || !file.events().isEmpty())
                        && (viewer.depot() == null
                                || file.problems().stream()
                                        .anyMatch(p -> viewer.sees(p.ref().depot()))));
        if (!any) {
            throw new NotHereException("There is no order \"" + order + "\". Fix: open the orders and choose one.");
        }
        OrderFileView.Reader reader =
                new OrderFileView.Reader(papers.parts(), depot -> OrdersPage.today(office, clock, depot), zone(lines));
        OrderFile shown = new OrderFile(
                file.head(),
                lines,
                file.events(),
                file.problems().stream()
                        .filter(problem -> viewer.sees(problem.ref().depot()))
                        .toList());
        model.addAttribute("view", OrderFileView.of(order, shown, lines, reader));
        model.addAttribute("said", said);
        model.addAttribute("mayOrder", viewer.is(Role.MANAGER, Role.BUYER));
        model.addAttribute(
                "mayMail",
                viewer.is(Role.MANAGER, Role.BUYER)
                        && lines.size() == file.lines().size());
        model.addAttribute("mayReceive", viewer.is(Role.MANAGER, Role.BUYER, Role.STOREMAN));
        return "order-file";
    }

    private static List<PurchaseLine> seen(Viewer viewer, OrderFile file) {
        return file.lines().stream().filter(line -> viewer.sees(line.depot())).toList();
    }

    private record Wanted(String order, String kind, SiteForm form, OrderPaper paper) {}

    /** @param form {@code order.pdf} or {@code order.xlsx} */
    @GetMapping("/orders/{order}/{form:order\\.(?:pdf|xlsx)}")
    Object paper(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("order") String order,
            @PathVariable("form") String form,
            HttpServletResponse response,
            Model model) {
        OrderFile file = orders.file(order);
        OrderPaper paper = papers.paper(order, file, seen(viewer, file));
        String back = "/orders/" + order;
        boolean pdf = form.endsWith("pdf");
        SiteForm site = office.form();
        return downloads.answer(
                new Wanted(order, form, site, paper),
                (progress, out) -> {
                    progress.step("writing the order");
                    if (pdf) {
                        paper.document(new OrderStyle(), site).write(site.paper(), out);
                    } else {
                        paper.workbook(site, out);
                    }
                },
                pdf ? FileOffer.pdf(order + ".pdf", back) : FileOffer.workbook(order + ".xlsx", back),
                response,
                model);
    }

    /** Puts the order into the outbox. */
    @PostMapping("/orders/mail")
    String mail(@ModelAttribute("viewer") Viewer viewer, @RequestParam("order") String order) throws IOException {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFile file = orders.file(order);
        if (seen(viewer, file).size() < file.lines().size()) {
            throw new NotHereException(
                    "Order " + order + " also has lines for other depots. Fix: ask someone with access to all depots.");
        }
        String address = papers.mail(order, file, clock.now(), viewer.name());
        return "redirect:/orders/" + order + "?said=" + (address.isEmpty() ? "no-address" : "mailed");
    }

    /** Where the order goes; UTC where that depot has no plan yet. */
    private ZoneId zone(List<PurchaseLine> lines) {
        return lines.stream()
                .findFirst()
                .flatMap(line -> office.find(line.depot()))
                .map(plan -> plan.site().timeZone())
                .orElse(ZoneOffset.UTC);
    }
}
