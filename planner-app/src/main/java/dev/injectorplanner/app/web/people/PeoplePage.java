package dev.injectorplanner.app.web.people;

import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Secrets;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who signs in: adding people, changing what they may do, new passwords. Passwords are drawn here and shown once. */
@Controller
class PeoplePage {
    private static final String PATH = "/settings/people";

    private final People people;
    private final Store store;

    PeoplePage(People people, Store store) {
        this.people = people;
        this.store = store;
    }

    @GetMapping(PATH)
    String page(Model model) {
        return shown(model, "", "", "");
    }

    @PostMapping(PATH + "/add")
    String add(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("name") String name,
            @RequestParam(name = "role", defaultValue = "") List<String> roles,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        try {
            String password = Secrets.password();
            people.add(new NewPerson(name.strip(), roles(roles), Depots.chosen(depot)), password, true, viewer.name());
            return shown(model, name.strip(), password, "");
        } catch (InvalidValueException e) {
            return shown(model, "", "", String.valueOf(e.getMessage()));
        }
    }

    @PostMapping(PATH + "/change")
    String change(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("name") String name,
            @RequestParam(name = "role", defaultValue = "") List<String> roles,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        try {
            people.change(new NewPerson(name, roles(roles), Depots.chosen(depot)), viewer.name());
            return "redirect:" + PATH;
        } catch (InvalidValueException e) {
            return shown(model, "", "", String.valueOf(e.getMessage()));
        }
    }

    @PostMapping(PATH + "/disable")
    String disable(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("name") String name,
            @RequestParam("disabled") boolean disabled,
            Model model) {
        try {
            people.setDisabled(name, disabled, viewer.name());
            return "redirect:" + PATH;
        } catch (InvalidValueException e) {
            return shown(model, "", "", String.valueOf(e.getMessage()));
        }
    }

    @PostMapping(PATH + "/password")
    String password(@ModelAttribute("viewer") Viewer viewer, @RequestParam("name") String name, Model model) {
        try {
            String password = Secrets.password();
            people.setPassword(name, password, true, viewer.name());
            return shown(model, name, password, "");
        } catch (InvalidValueException e) {
            return shown(model, "", "", String.valueOf(e.getMessage()));
        }
    }

    private static Set<Role> roles(List<String> names) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        names.forEach(name -> roles.add(Role.of(name)));
        return roles;
    }

    private String shown(Model model, String newFor, String password, String wrong) {
        List<Account> accounts = people.list();
        model.addAttribute("accounts", accounts);
        model.addAttribute("depots", Depots.list(store));
        model.addAttribute("allRoles", Arrays.asList(Role.values()));
        model.addAttribute("newFor", newFor);
        model.addAttribute("newPassword", password);
        model.addAttribute("wrong", wrong);
        return "people";
    }
}
