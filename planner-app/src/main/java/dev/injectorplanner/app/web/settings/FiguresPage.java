package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.site.KeptSetting;
import dev.injectorplanner.app.site.SettingArea;
import dev.injectorplanner.app.site.SettingKind;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.site.SiteSettings.Refused;
import dev.injectorplanner.app.web.office.OwnWords;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.units.SiteUnits;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Figures of the plan, and the site's name and units: one form each, all of it set or nothing. */
@Controller
public class FiguresPage {
    private static final String FIGURES = "/settings/figures";
    private static final String SITE = "/settings/site";
    private static final int NOT_KEPT = 422;

    private final SiteSettings settings;
    private final OutdatedPlans before;

    FiguresPage(SiteSettings settings, OutdatedPlans before) {
        this.settings = settings;
        this.before = before;
    }

    /** Settings of one area. */
    record Group(String letter, String title, List<FigureView> rows) {}

    @GetMapping(FIGURES)
    String figures(@ModelAttribute("viewer") Viewer viewer, Model model) {
        OwnWords.keep(model, "done");
        return shown(FIGURES, viewer, settings.units(), Map.of(), Map.of(), model);
    }

    @GetMapping(SITE)
    String site(@ModelAttribute("viewer") Viewer viewer, Model model) {
        OwnWords.keep(model, "done");
        return shown(SITE, viewer, settings.units(), Map.of(), Map.of(), model);
    }

    @PostMapping(FIGURES)
    String setFigures(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam Map<String, String> sent,
            HttpServletResponse response,
            RedirectAttributes next,
            Model model) {
        return set(FIGURES, viewer, sent, response, next, model);
    }

    @PostMapping(SITE)
    String setSite(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam Map<String, String> sent,
            HttpServletResponse response,
            RedirectAttributes next,
            Model model) {
        return set(SITE, viewer, sent, response, next, model);
    }

    private String set(
            String path,
            Viewer viewer,
            Map<String, String> sent,
            HttpServletResponse response,
            RedirectAttributes next,
            Model model) {
        kinds(path).map(kind -> kind.area().changer()).forEach(role -> Permissions.require(viewer, role));
        Permissions.requireAllDepots(viewer, "Settings");
        SiteUnits units = FormUnits.of(sent.getOrDefault("units", ""), settings.units());
        List<SiteSettings.Wish> wishes = wishes(path, sent);
        Map<String, Refused> wrong = settings.change(wishes, units, viewer.name());
        if (wrong.isEmpty()) {
            next.addFlashAttribute(
                    "done", wishes.isEmpty() ? "Nothing was changed." : "Saved: " + titles(wishes) + ".");
            return "redirect:" + path;
        }
        response.setStatus(NOT_KEPT);
        model.addAttribute("done", "");
        return shown(path, viewer, units, sent, wrong, model);
    }

    private static String titles(List<SiteSettings.Wish> wishes) {
        return String.join(
                ", ", wishes.stream().map(wish -> wish.kind().title()).toList());
    }

    /** Only what the person changed; a button sets one of them back to the planner's default. */
    private static List<SiteSettings.Wish> wishes(String path, Map<String, String> sent) {
        List<SiteSettings.Wish> wishes = new ArrayList<>();
        kinds(path).filter(kind -> sent.containsKey("v." + kind.name())).forEach(kind -> {
            String typed = typed(kind.name(), sent);
            if (!typed.equals(was(kind.name(), sent))) {
                wishes.add(new SiteSettings.Wish(kind, typed, seen(kind.name(), sent)));
            }
        });
        return wishes;
    }

    private static String typed(String name, Map<String, String> sent) {
        return sent.getOrDefault("clear", "").equals(name)
                ? ""
                : sent.getOrDefault("v." + name, "").strip();
    }

    private static String was(String name, Map<String, String> sent) {
        return sent.getOrDefault("was." + name, "");
    }

    private static long seen(String name, Map<String, String> sent) {
        String text = sent.getOrDefault("seen." + name, "");
        return text.matches("\\d{1,18}") ? Long.parseLong(text) : KeptSetting.UNSET;
    }

    private static Stream<SettingKind> kinds(String path) {
        return SettingKinds.ALL.stream().filter(kind -> (kind.area() == SettingArea.SITE) == path.equals(SITE));
    }

    private String shown(
            String path,
            Viewer viewer,
            SiteUnits units,
            Map<String, String> sent,
            Map<String, Refused> wrong,
            Model model) {
        Map<String, KeptSetting> kept = settings.kept();
        List<Group> groups = new ArrayList<>();
        for (SettingArea area : SettingArea.values()) {
            List<FigureView> rows = kinds(path)
                    .filter(kind -> kind.area() == area)
                    .map(kind -> field(
                            FigureView.of(kind, kept.get(kind.name()), units, settings.calibrated(kind)), sent, wrong))
                    .toList();
            if (!rows.isEmpty()) {
                groups.add(new Group(String.valueOf((char) ('A' + groups.size())), area.words(), rows));
            }
        }
        model.addAttribute("groups", groups);
        model.addAttribute("path", path);
        model.addAttribute("units", FormUnits.text(units));
        model.addAttribute("wrong", wrong);
        model.addAttribute(
                "may",
                viewer.depot() == null
                        && kinds(path).allMatch(kind -> viewer.is(kind.area().changer())));
        model.addAttribute("before", path.equals(SITE) ? List.of() : before.depots(viewer));
        return "figures";
    }

    /**
     * A field of a page that is shown again. What was not touched stands as it is stored now; what was typed stays with the
     * version that the person saw, until a sentence has told what somebody else set.
     */
    private static FigureView field(FigureView now, Map<String, String> sent, Map<String, Refused> wrong) {
        if (!sent.containsKey("v." + now.name())) {
            return now;
        }
        String typed = typed(now.name(), sent);
        String was = was(now.name(), sent);
        Refused refused = wrong.get(now.name());
        if (refused != null && refused.meanwhile()) {
            return now.again(typed, refused.words());
        }
        String words = refused == null ? "" : refused.words();
        return typed.equals(was) ? now : now.again(typed, was, seen(now.name(), sent), words);
    }
}
