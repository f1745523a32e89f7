package dev.injectorplanner.imports.cell;

/** Which sign stands before the decimals in numbers such as 490,254 and 490.254. */
public enum NumberForm {
    /** Nobody said: a number that can be read two ways is refused. */
    UNSTATED("ask"),
    /** 490,254 is four hundred and ninety thousand; 490.254 has three decimals. */
    POINT("1,234.5"),
    /** 490.254 is four hundred and ninety thousand; 490,254 has three decimals. */
    COMMA("1.234,5");

    private final String example;

    NumberForm(String example) {
        this.example = example;
    }

    /** How it is written for people: by an example. */
    public String example() {
        return example;
    }
}
