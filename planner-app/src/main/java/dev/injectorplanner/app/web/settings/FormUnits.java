package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.core.units.SiteUnits;

/** The units of a form travel with it: what was typed is read as the form named it, should the site have changed its units. */
final class FormUnits {
    private FormUnits() {}

    static String text(SiteUnits units) {
        return units.distance() + " " + units.volume() + " " + units.temperature();
    }

    /** The units that a form names, or the site's where it names none. */
    static SiteUnits of(String text, SiteUnits site) {
        String[] names = text.split(" ", -1);
        try {
            return names.length == 3
                    ? new SiteUnits(
                            SiteUnits.Distance.valueOf(names[0]),
                            SiteUnits.Volume.valueOf(names[1]),
                            SiteUnits.Temperature.valueOf(names[2]))
                    : site;
        } catch (IllegalArgumentException e) { // no form of ours says that
            return site;
        }
    }
}
