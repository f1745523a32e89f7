package dev.injectorplanner.imports.obd;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A list of fault codes as text: codes between commas, semicolons or line ends; or columns under headings, of which one is
 * code, or two are spn and fmi, and seen_at (or at) and count may stand beside. Four hexadecimal digits are the two bytes of
 * ISO 15031-5.
 */
public final class CodeList {
    private static final Pattern SEPARATOR = Pattern.compile("[,;\t]");
    private static final Pattern TWO_BYTES = Pattern.compile("[0-9A-F]{4}");
    private static final int LONGEST = 4_000;
    private static final int SHOWN = 5;

    private final Consumer<ListedCode> codes;
    private final List<String> examples = new ArrayList<>();
    private @Nullable List<String> headings;
    private long lines;
    private long damaged;

    private CodeList(Consumer<ListedCode> codes) {
        this.codes = codes;
    }

    /**
     * Reads a list.
     *
     * @param codes takes each code as it comes
     * @return the list, with what could not be read
     * @throws FileRefusedException if the file cannot be read, or holds no code at all
     */
    public static CodeList read(Path file, Consumer<ListedCode> codes) {
        boolean[] any = {false};
        CodeList list = new CodeList(code -> {
            any[0] = true;
            codes.accept(code);
        });
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            StringBuilder line = new StringBuilder();
            for (int letter = in.read(); letter >= 0; letter = in.read()) {
                if (letter == '\n') {
                    list.line(line.toString());
                    line.setLength(0);
                } else if (line.length() <= LONGEST) {
                    line.append((char) letter);
                }
            }
            list.line(line.toString());
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check its name and your permission to read it", e);
        }
        if (!any[0]) {
            throw new FileRefusedException(
                    file,
                    "is neither a log of bus frames nor a list of fault codes",
                    "log with candump -L, or write one code a line, such as SPN 651 FMI 5 or P0201");
        }
        return list;
    }

    private void line(String text) {
        lines++;
        String line = text.strip().replace("\u00EF\u00BB\u00BF", "").replace("\"", "");
        if (line.isEmpty() || line.startsWith("#")) {
            return;
        }
        List<String> cells =
                Arrays.stream(SEPARATOR.split(line, -1)).map(String::strip).toList();
        if (headings == null) {
            List<String> first =
                    cells.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
            boolean named = first.contains("code") || first.contains("spn") && first.contains("fmi");
            headings = named ? first : List.of();
            if (named) {
                return;
            }
        }
        if (headings.isEmpty()) {
            cells.stream().filter(cell -> !cell.isEmpty()).forEach(cell -> code(cell, "", ""));
        } else {
            String code = cell(cells, "code");
            code(
                    code.isEmpty() ? cell(cells, "spn") + "/" + cell(cells, "fmi") : code,
                    cell(cells, "seen_at") + cell(cells, "at"),
                    cell(cells, "count"));
        }
    }

    private String cell(List<String> cells, String heading) {
        int at = headings == null ? -1 : headings.indexOf(heading);
        return at >= 0 && at < cells.size() ? cells.get(at) : "";
    }

    private void code(String text, String at, String count) {
        try {
            String upper = text.toUpperCase(Locale.ROOT);
            FaultCode code = new FaultCode(TWO_BYTES.matcher(upper).matches() ? "0x" + upper : text);
            Integer times = count.matches("\\d{1,6}") ? Integer.valueOf(count) : null;
            codes.accept(new ListedCode(lines, code, at, times));
        } catch (InvalidValueException e) {
            damaged++;
            if (examples.size() < SHOWN) {
                examples.add("line " + lines + ", " + e.getMessage());
            }
        }
    }

    /** Codes that could not be read. */
    public long damaged() {
        return damaged;
    }

    /** The first few of them: line, what is wrong, how to fix it. */
    public List<String> examples() {
        return List.copyOf(examples);
    }
}
