package dev.injectorplanner.app.testkit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;

/** A form with files, as a browser sends it (RFC 7578); names go out as they are, however hostile. */
public final class Multipart {
    private static final String BOUNDARY = "----planner-test-boundary";

    private final ByteArrayOutputStream body = new ByteArrayOutputStream();

    public Multipart field(String name, String value) throws IOException {
        return part("form-data; name=\"" + name + "\"", value.getBytes(StandardCharsets.UTF_8));
    }

    /** @param fileName as it stands between the quotes */
    public Multipart file(String name, String fileName, byte[] content) throws IOException {
        return part("form-data; name=\"" + name + "\"; filename=\"" + fileName + "\"", content);
    }

    private Multipart part(String disposition, byte[] content) throws IOException {
        body.write(("--" + BOUNDARY + "\r\nContent-Disposition: " + disposition + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(content);
        body.write("\r\n".getBytes(StandardCharsets.UTF_8));
        return this;
    }

    public HttpRequest.Builder to(URI address) throws IOException {
        return HttpRequest.newBuilder(address)
                .header("Accept", "text/html")
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(BodyPublishers.ofByteArray(whole()));
    }

    /** The same without a length: in chunks. */
    public HttpRequest.Builder inChunksTo(URI address) throws IOException {
        byte[] whole = whole();
        return HttpRequest.newBuilder(address)
                .header("Accept", "text/html")
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(whole)));
    }

    private byte[] whole() throws IOException {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        body.writeTo(whole);
        whole.write(("--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return whole.toByteArray();
    }
}
