package dev.injectorplanner.core.replay.run;

/** What money is spent on in a replay; the kinds add up to the whole. */
public enum CostKind {
    /** Injectors and what is fitted with them; core deposits come back and count nothing. */
    PARTS("parts"),
    /** Hours of replacing, at the plain rate. */
    LABOUR("labour"),
    /** What overtime costs beyond the plain rate. */
    OVERTIME("overtime"),
    COOLANT("coolant"),
    /** Use of a bay, moving trucks in and out. */
    BAY("bay"),
    /** Trucks that stand for the work, and for parts that are waited for. */
    DOWNTIME("downtime"),
    /** Labour, bay and downtime of injector tests. */
    TESTS("tests"),
    /** Tow, roadside, lost load and damage of failures in service. */
    ROAD_FAILURES("road failures"),
    /** Parts sent in haste. */
    EXPRESS("express");

    private final String words;

    CostKind(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
