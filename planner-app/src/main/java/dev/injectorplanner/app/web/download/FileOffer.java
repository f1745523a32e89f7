package dev.injectorplanner.app.web.download;

import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/**
 * A file as a browser gets it.
 *
 * @param name its name
 * @param type its type
 * @param inline whether it is shown in the browser, not saved
 * @param back the page that offers it
 */
public record FileOffer(String name, MediaType type, boolean inline, String back) {
    private static final MediaType WORKBOOK =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    public FileOffer {
        name = name.replaceAll("[^A-Za-z0-9._-]", "_");
    }

    public static FileOffer workbook(String name, String back) {
        return new FileOffer(name, WORKBOOK, false, back);
    }

    public static FileOffer pdf(String name, String back) {
        return new FileOffer(name, MediaType.APPLICATION_PDF, true, back);
    }

    ResponseEntity<byte[]> answer(byte[] file) {
        ContentDisposition.Builder shown = inline ? ContentDisposition.inline() : ContentDisposition.attachment();
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        shown.filename(name).build().toString())
                .body(file);
    }
}
