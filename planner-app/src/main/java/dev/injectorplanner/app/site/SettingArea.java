package dev.injectorplanner.app.site;

import dev.injectorplanner.app.people.Role;

/** What a setting belongs to, in the order of the page. */
public enum SettingArea {
    VISITS("Visits and their costs"),
    LOOKING_AHEAD("Looking ahead"),
    SAFETY("Safety: bring in now"),
    INSPECTION("Inspection"),
    PARTS("Buying parts"),
    COOLANT("Coolant"),
    PLANNING_FIGURES("Planning figures"),
    SITE("Site and units");

    private final String words;

    SettingArea(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Who changes it. */
    public Role changer() {
        return this == SITE ? Role.ADMINISTRATOR : Role.MANAGER;
    }
}
