package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteName;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.core.check.InvalidValueException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Signing in, and changing one's password. */
@Controller
class SignInPage {
    static final String SIGN_IN = "/sign-in";
    static final String SIGN_OUT = "/sign-out";
    static final String PASSWORD = "/password";

    private static final int LONGEST_WAIT = 86_400;
    private static final Map<String, String> NOTES = Map.of(
            "out", "You are signed out.",
            "ended", "You were signed out: the session expired, or your account was changed. Sign in again.",
            "changed", "Password changed. Sign in with the new one.",
            "old", "The form was open for too long. Please sign in now.");

    private final People people;
    private final SignInThrottle throttle;
    private final SiteName site;
    private final String provider;

    SignInPage(People people, SignInThrottle throttle, SiteName site, ObjectProvider<ProviderSettings> provider) {
        this.people = people;
        this.throttle = throttle;
        this.site = site;
        ProviderSettings through = provider.getIfAvailable();
        this.provider = through == null ? "" : through.name();
    }

    @GetMapping(SIGN_IN)
    String signIn(@RequestParam Map<String, String> asked, HttpServletRequest request, Model model) {
        model.addAttribute("site", site.name());
        model.addAttribute("provider", provider);
        model.addAttribute("wrong", asked.containsKey("provider") ? why(request.getSession(false)) : wrong(asked));
        model.addAttribute(
                "note",
                NOTES.entrySet().stream()
                        .filter(note -> asked.containsKey(note.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst()
                        .orElse(""));
        return "sign-in";
    }

    /** Why the provider's answer did not do, said once. */
    private static String why(@Nullable HttpSession session) {
        Object why = session == null ? null : session.getAttribute(ProviderSignIn.WHY);
        if (session == null || why == null) {
            return "";
        }
        session.removeAttribute(ProviderSignIn.WHY);
        return why.toString();
    }

    private static String wrong(Map<String, String> asked) {
        String wait = asked.get("wait");
        if (wait != null && wait.matches("\\d{1,6}")) {
            int seconds = Math.min(LONGEST_WAIT, Integer.parseInt(wait));
            return "Too many tries. Wait " + SignInThrottle.words(Duration.ofSeconds(seconds)) + ", then try again.";
        }
        return asked.containsKey("wrong") ? "Name and password do not match. Try again." : "";
    }

    @GetMapping(PASSWORD)
    String password(@ModelAttribute("viewer") Viewer viewer, Model model) {
        boolean first =
                people.find(viewer.name()).map(account -> account.mustChange()).orElse(false);
        model.addAttribute("first", first);
        model.addAttribute("wrong", "");
        return "password";
    }

    /** The old password is asked for again: a device left open must not be enough. Then everybody signs in again. */
    @PostMapping(PASSWORD)
    String change(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("now") String now,
            @RequestParam("next") String next,
            @RequestParam("again") String again,
            HttpServletRequest request,
            Model model) {
        String wrong = refusal(viewer.name(), now, next, again, request.getRemoteAddr());
        if (wrong == null) {
            request.getSession().invalidate();
            return "redirect:" + SIGN_IN + "?changed";
        }
        model.addAttribute("first", false);
        model.addAttribute("wrong", wrong);
        return "password";
    }

    private @Nullable String refusal(String name, String now, String next, String again, String address) {
        Duration wait = throttle.take(name.toLowerCase(java.util.Locale.ROOT), address);
        if (!wait.isZero()) {
            return "Too many tries. Wait " + SignInThrottle.words(wait) + ", then try again.";
        }
        if (people.findBySignIn(name, now).isEmpty()) {
            return "The current password is wrong. Try again.";
        }
        throttle.right(name.toLowerCase(java.util.Locale.ROOT), address);
        if (!next.equals(again)) {
            return "The two new passwords do not match. Type the same one twice.";
        }
        if (next.equals(now)) {
            return "The new password is the same as the old one. Choose another.";
        }
        try {
            people.setPassword(name, next, false, name);
            return null;
        } catch (InvalidValueException e) {
            return "The new password " + e.reason() + ". Fix: " + e.fix() + ".";
        }
    }
}
