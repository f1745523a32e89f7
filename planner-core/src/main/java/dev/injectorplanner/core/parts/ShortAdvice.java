package dev.injectorplanner.core.parts;

/** What to do about a visit whose parts may not be there. */
public enum ShortAdvice {
    /** Order today as usual: the supplier is likely to make it. */
    ORDER_TODAY,
    /** Pay for a faster shipment: cheaper than moving the visit, and in time. */
    EXPEDITE,
    /** Keep the visit: only breakable pieces are missing, and most likely none will be needed. */
    GO_AHEAD,
    /** Move the visit to the week in which the parts are there. */
    MOVE,
    /** Have another depot send them: it can spare them, and that is cheaper than express. */
    TRANSFER
}
