package dev.injectorplanner.core.schedule.exact;

/** What can stand in the way of an option. */
enum Limit {
    LABOUR_HOURS("labour hours"),
    BAYS("bay-days"),
    DUTY_GROUP("truck-days of its duty group"),
    DEAR_OVERTIME("the price of overtime");

    final String words;

    Limit(String words) {
        this.words = words;
    }
}
