package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.order.SupplierContact;
import dev.injectorplanner.app.order.Suppliers;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Permissions;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where suppliers get their orders. */
@Controller
public class SuppliersPage {
    private final Suppliers suppliers;
    private final SiteClock clock;

    SuppliersPage(Application application, SiteClock clock) {
        this.suppliers = new Suppliers(application.store());
        this.clock = clock;
    }

    @GetMapping("/orders/suppliers")
    String list(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "saved", defaultValue = "") String saved,
            Model model) {
        model.addAttribute("rows", suppliers.list());
        model.addAttribute("saved", saved);
        model.addAttribute("mayChange", viewer.is(Role.MANAGER, Role.BUYER));
        return "suppliers";
    }

    @PostMapping("/orders/suppliers")
    String save(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        String supplier = form.text("supplier");
        if (suppliers.list().stream().noneMatch(each -> each.supplier().equals(supplier))) {
            throw new NotHereException(
                    "No part is sold by \"" + supplier + "\". Fix: choose a supplier from the page.");
        }
        suppliers.save(
                new SupplierContact(
                        supplier,
                        form.text("mail"),
                        form.text("address"),
                        form.text("customer"),
                        !form.all("mails").isEmpty()),
                clock.now(),
                viewer.name());
        return "redirect:/orders/suppliers?saved="
                + java.net.URLEncoder.encode(supplier, java.nio.charset.StandardCharsets.UTF_8);
    }
}
