package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.fleet.Bank;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** An engine from above, front at the top: cylinders to do are filled, those that stay are open. Inks in grey print. */
final class EngineDrawing {
    private static final int RADIUS = 14;
    private static final int PITCH = 36;
    private static final int TOP = 26;
    private static final int BANK_WIDTH = 54;
    /** One bank of a V lies a little behind the other. */
    private static final int OFFSET = 6;

    private final StringBuilder svg = new StringBuilder();
    private final List<Bank> banks;
    private final Collection<Integer> done;

    private EngineDrawing(List<Bank> banks, Collection<Integer> done) {
        this.banks = banks;
        this.done = done;
    }

    static String of(List<Bank> banks, Collection<Integer> done) {
        return new EngineDrawing(banks, done).draw();
    }

    private String draw() {
        int rows =
                banks.stream().mapToInt(bank -> bank.cylinders().size()).max().orElseThrow();
        int width = Math.max(100, banks.size() * BANK_WIDTH + 20);
        int height = TOP + rows * PITCH + OFFSET + 24;
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\">",
                width,
                height,
                width,
                height));
        int middle = width / 2;
        svg.append(String.format(
                Locale.ROOT,
                "<path d=\"M%d 3l6 9h-12z\" fill=\"#000000\"/>"
                        + "<text x=\"%d\" y=\"12\" font-size=\"9\" font-weight=\"bold\">front</text>",
                middle,
                middle + 10));
        double left = middle - banks.size() * BANK_WIDTH / 2.0;
        for (int b = 0; b < banks.size(); b++) {
            bank(banks.get(b), left + b * BANK_WIDTH, TOP + b * OFFSET);
        }
        return svg.append("</svg>").toString();
    }

    private void bank(Bank bank, double left, int top) {
        int height = bank.cylinders().size() * PITCH;
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"#000000\"/>",
                left + 5,
                top,
                BANK_WIDTH - 10,
                height));
        for (int i = 0; i < bank.cylinders().size(); i++) {
            cylinder(bank.cylinders().get(i), left + BANK_WIDTH / 2.0, top + i * PITCH + PITCH / 2);
        }
        svg.append(text(left + BANK_WIDTH / 2.0, top + height + 12, 9, "#000000", escaped(bank.name())));
    }

    private void cylinder(int number, double x, int y) {
        boolean filled = done.contains(number);
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%d\" r=\"%d\" fill=\"%s\" stroke=\"#000000\" stroke-width=\"1.2\"/>",
                x,
                y,
                RADIUS,
                filled ? "#000000" : "#ffffff"));
        svg.append(text(x, y + 5, 15, filled ? "#ffffff" : "#000000", String.valueOf(number)));
    }

    private static String text(double x, int y, int size, String ink, String words) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%d\" font-size=\"%d\" font-weight=\"bold\" text-anchor=\"middle\" fill=\"%s\">%s</text>",
                x,
                y,
                size,
                ink,
                words);
    }

    private static String escaped(String words) {
        return words.chars()
                .mapToObj(c -> switch (c) {
                    case '<' -> "&lt;";
                    case '>' -> "&gt;";
                    case '&' -> "&amp;";
                    case '"' -> "&quot;";
                    default -> Character.toString(c);
                })
                .collect(Collectors.joining());
    }
}
