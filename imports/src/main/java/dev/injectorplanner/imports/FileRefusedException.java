package dev.injectorplanner.imports;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A whole file is refused. The message is one clear sentence: which file, what is wrong, how to mend it. */
public final class FileRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final String reason;
    private final String mend;

    /**
     * @param file the file
     * @param reason what is wrong, without a full stop, starting with a verb or a place
     * @param mend what to do about it, without a full stop
     */
    public FileRefusedException(Path file, String reason, String mend) {
        this(file, reason, mend, null);
    }

    FileRefusedException(Path file, String reason, String mend, @Nullable Throwable cause) {
        super(nameOf(file) + ": " + reason + ". Mend: " + mend + ".", cause);
        this.file = nameOf(file);
        this.reason = reason;
        this.mend = mend;
    }

    static String nameOf(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }

    public String file() {
        return file;
    }

    public String reason() {
        return reason;
    }

    public String mend() {
        return mend;
    }
}
