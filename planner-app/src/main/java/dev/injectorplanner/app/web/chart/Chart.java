package dev.injectorplanner.app.web.chart;

import java.util.List;
import java.util.stream.Stream;

/**
 * A picture of figures as a page draws it, in the units of its frame.
 *
 * @param title what it shows
 * @param about the picture in words, for those who do not see it
 * @param frame its size
 * @param across what the axis below says, empty for nothing
 * @param lines lines across with their figures
 * @param feet figures below
 * @param marks what is drawn, the first below the others
 * @param labels words in the picture
 * @param slots places whose values are told by pointer and focus
 * @param legend what each kind of mark is
 */
public record Chart(
        String title,
        String about,
        Frame frame,
        String across,
        List<Line> lines,
        List<Foot> feet,
        List<Mark> marks,
        List<Label> labels,
        List<Slot> slots,
        List<Legend> legend) {
    public Chart {
        lines = List.copyOf(lines);
        feet = List.copyOf(feet);
        marks = List.copyOf(marks);
        labels = List.copyOf(labels);
        slots = List.copyOf(slots);
        legend = List.copyOf(legend);
    }

    /** This picture with another in the same frame, which has its own field and says the same below. */
    public Chart with(Chart other) {
        return new Chart(
                title,
                about,
                frame,
                across,
                joined(lines, other.lines),
                joined(feet, other.feet),
                joined(marks, other.marks),
                joined(labels, other.labels),
                joined(slots, other.slots),
                legend);
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /**
     * Size of a picture and of the field in which values are drawn.
     *
     * @param width of the whole
     * @param height of the whole
     * @param left left edge of the field
     * @param right right edge of the field
     * @param top upper edge of the field
     * @param floor lower edge of the field
     */
    public record Frame(double width, double height, double left, double right, double top, double floor) {
        /** For half a page on a desk. */
        public static final Frame WIDE = new Frame(640, 320, 58, 624, 16, 272);

        /** For the width of a phone. */
        public static final Frame NARROW = new Frame(344, 260, 50, 334, 16, 216);

        /** Across a page: the field, and room for rows of events below. */
        public static final Frame TIME_WIDE = new Frame(1000, 290, 70, 985, 18, 170);

        /** The same on a phone. */
        public static final Frame TIME_NARROW = new Frame(344, 290, 54, 334, 18, 170);

        /** The upper and the lower field of a small picture. */
        public static final Frame SMALL_ABOVE = new Frame(300, 208, 36, 290, 20, 84);

        public static final Frame SMALL_BELOW = new Frame(300, 208, 36, 290, 112, 172);

        /** One of several side by side, by month. */
        public static final Frame PANEL = new Frame(404, 214, 52, 400, 20, 168);
    }

    /** A line across and its figure. */
    public record Line(double at, String words) {}

    /** A figure below, and its place. */
    public record Foot(double at, double down, String anchor, String words) {}

    /** A path in one kind of ink. */
    public record Mark(Ink ink, String path) {}

    /** Words in the picture. */
    public record Label(double x, double y, String anchor, boolean strong, String words) {}

    /**
     * A place whose values are told.
     *
     * @param left left edge of the strip that answers to the pointer
     * @param width its width
     * @param top its upper edge
     * @param height its height
     * @param middle where its values stand
     * @param words all of it in words
     * @param values its figures, shown at its marks
     * @param roomy whether they have room beside those of the place before, so that all of these can be shown at once
     */
    public record Slot(
            double left,
            double width,
            double top,
            double height,
            double middle,
            String words,
            List<Label> values,
            boolean roomy) {
        public Slot {
            values = List.copyOf(values);
        }
    }

    /** A kind of mark and what it is. */
    public record Legend(Ink ink, String words) {}

    /** The same figures as a table, its first column naming the rows. */
    public record Figures(List<String> heads, List<List<String>> rows) {
        public Figures {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * One picture drawn for a desk and for a phone, with its figures as a table.
     *
     * @param wide for a desk
     * @param narrow for a phone: drawn anew, since a picture made smaller cannot be read
     */
    public record Both(Chart wide, Chart narrow, Figures figures) {}
}
