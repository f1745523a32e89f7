package dev.injectorplanner.imports.match;

import dev.injectorplanner.imports.cell.Heading;
import java.util.List;

/** The first headings of a file of refused rows: they tell nothing of the source and mean nothing in a row. */
public final class RefusalHeadings {
    /** As they are written. */
    public static final List<String> ALL =
            List.of("refused_line", "refused_column", "refused_value", "refused_reason", "refused_fix");

    /** The last one as files of earlier versions call it. */
    private static final String EARLIER_FIX = "refused_mend";

    private RefusalHeadings() {}

    public static boolean isOne(String heading) {
        String plain = Heading.plain(heading);
        return Heading.plain(EARLIER_FIX).equals(plain)
                || ALL.stream().anyMatch(own -> Heading.plain(own).equals(plain));
    }
}
