package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.util.Arrays;

/** What cylinder labels are printed on. */
public enum LabelForm {
    /** Two by four on a sheet of A4. */
    A4("a4", "A4", "A4", false, 66),
    /** Two by four on a sheet of US letter paper. */
    LETTER("letter", "Letter", "letter", false, 62),
    /** A label printer's own label, 50 x 25 mm. */
    LABEL_50X25("50x25", "50 x 25 mm", "50mm 25mm", true, 25),
    /** A label printer's 62 mm roll, cut at 29 mm. */
    ROLL_62("62", "62 mm roll", "62mm 29mm", true, 29);

    private final String key;
    private final String words;
    private final String page;
    private final boolean single;
    private final int heightMm;

    LabelForm(String key, String words, String page, boolean single, int heightMm) {
        this.key = key;
        this.words = words;
        this.page = page;
        this.single = single;
        this.heightMm = heightMm;
    }

    /** Its name in addresses. */
    public String key() {
        return key;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }

    /** Size of the page, as style sheets write it. */
    public String page() {
        return page;
    }

    /** Whether each label is a page of its own. */
    public boolean single() {
        return single;
    }

    /** Height of one label, mm. */
    public int heightMm() {
        return heightMm;
    }

    /** Sheets of a site's paper. */
    public static LabelForm on(PaperSize paper) {
        return paper == PaperSize.LETTER ? LETTER : A4;
    }

    /** By its name in addresses; A4 where it is none. */
    public static LabelForm of(String key) {
        return Arrays.stream(values())
                .filter(form -> form.key.equals(key))
                .findFirst()
                .orElse(A4);
    }
}
