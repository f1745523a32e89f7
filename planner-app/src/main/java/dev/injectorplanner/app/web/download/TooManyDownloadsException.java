package dev.injectorplanner.app.web.download;

import dev.injectorplanner.core.check.UserError;

/** A file is more than there is memory for, or too many are waiting to be made. */
public final class TooManyDownloadsException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    TooManyDownloadsException(Throwable cause) {
        super("Too many files are being made at the moment. Fix: wait a minute, then try again.", cause);
    }

    TooManyDownloadsException(int megabytes) {
        super("The file has " + megabytes + " MB, more than is kept for downloads. Fix: choose one depot.");
    }
}
