package dev.injectorplanner.reports.table;

/** Unit of a column's figures. */
public enum Unit {
    NONE(""),
    /** The site's currency, which nobody has to be told. */
    MONEY(""),
    HOURS("h"),
    LITRES("l"),
    PERCENT("%"),
    CELSIUS("C");

    private final String sign;

    Unit(String sign) {
        this.sign = sign;
    }

    public String sign() {
        return sign;
    }
}
