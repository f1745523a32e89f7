package dev.injectorplanner.imports.refusal;

import dev.injectorplanner.core.check.UserError;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A whole file is refused. The message is one clear sentence: which file, what is wrong, how to fix it. */
public final class FileRefusedException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final String reason;
    private final String fix;

    /**
     * @param file the file
     * @param reason what is wrong, without a full stop, starting with a verb or a place
     * @param fix what to do about it, without a full stop
     */
    public FileRefusedException(Path file, String reason, String fix) {
        this(file, reason, fix, null);
    }

    public FileRefusedException(Path file, String reason, String fix, @Nullable Throwable cause) {
        super(nameOf(file) + ": " + reason + ". Fix: " + fix + ".", cause);
        this.file = nameOf(file);
        this.reason = reason;
        this.fix = fix;
    }

    public static String nameOf(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }

    public String file() {
        return file;
    }

    public String reason() {
        return reason;
    }

    public String fix() {
        return fix;
    }
}
