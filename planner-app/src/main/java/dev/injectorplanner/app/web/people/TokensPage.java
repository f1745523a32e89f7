package dev.injectorplanner.app.web.people;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
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

/** Tokens for other programs. A secret is shown once, on the page that made it. */
@Controller
class TokensPage {
    private static final String PATH = "/settings/tokens";

    private final ApiTokens tokens;
    private final Store store;

    TokensPage(ApiTokens tokens, Store store) {
        this.tokens = tokens;
        this.store = store;
    }

    @GetMapping(PATH)
    String page(Model model) {
        return shown(model, "", "");
    }

    @PostMapping(PATH + "/make")
    String make(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("name") String name,
            @RequestParam(name = "scope", defaultValue = "") List<String> scopes,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "days", defaultValue = "365") String days,
            Model model) {
        try {
            Set<Scope> wanted = EnumSet.noneOf(Scope.class);
            scopes.forEach(scope -> wanted.add(Scope.of(scope)));
            return shown(
                    model,
                    tokens.make(name, wanted, Depots.chosen(depot), number("days", days), viewer.name())
                            .secret(),
                    "");
        } catch (InvalidValueException e) {
            return shown(model, "", String.valueOf(e.getMessage()));
        }
    }

    @PostMapping(PATH + "/revoke")
    String revoke(@ModelAttribute("viewer") Viewer viewer, @RequestParam("id") String id, Model model) {
        try {
            tokens.revoke(number("token", id), viewer.name());
            return "redirect:" + PATH;
        } catch (InvalidValueException e) {
            return shown(model, "", String.valueOf(e.getMessage()));
        }
    }

    private static int number(String field, String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw new InvalidValueException(field, text, "is not a whole number", "write one, such as 365");
        }
    }

    private String shown(Model model, String secret, String wrong) {
        model.addAttribute("tokens", tokens.list());
        model.addAttribute("now", Instant.now());
        model.addAttribute("depots", Depots.list(store));
        model.addAttribute(
                "scopes", Arrays.stream(Scope.values()).map(Scope::text).toList());
        model.addAttribute("secret", secret);
        model.addAttribute("wrong", wrong);
        return "tokens";
    }
}
