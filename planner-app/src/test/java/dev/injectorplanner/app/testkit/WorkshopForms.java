package dev.injectorplanner.app.testkit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/** Forms as a mechanic sends them at truck T-1 of the test fleet. */
public final class WorkshopForms {
    private WorkshopForms() {}

    /** Field and value by turns. */
    public static Map<String, String> of(String... fields) {
        Map<String, String> form = new LinkedHashMap<>();
        for (int at = 0; at < fields.length; at += 2) {
            form.put(fields[at], fields[at + 1]);
        }
        return form;
    }

    /** Two injectors for cylinders 1 and 2: R7 with code GGGG, R8 with code HHHH. */
    public static Map<String, String> twoReceived() {
        Map<String, String> form = of("depot", "North", "part", "INJ-4R", "origin", "REMAN");
        form.putAll(of("u0.serial", "R7", "u0.code", "GGGG", "u1.serial", "R8", "u1.code", "HHHH"));
        return form;
    }

    /** A job on cylinders 1 and 2, since 1 failed. */
    public static Map<String, String> started(String key) {
        return of("formKey", key, "failed", "1", "set", "1 2");
    }

    /** A close-out after three hours, without its cylinders. */
    public static Map<String, String> closed(String key) {
        return of("formKey", key, "doneOn", "2026-03-02", "labourHours", "3", "do", "close");
    }

    /** One cylinder of a close-out: fitted and coded. */
    public static Map<String, String> fitted(int cylinder, String found, String... more) {
        String c = "c" + cylinder + ".";
        Map<String, String> form = of(c + "fate", "fitted", c + "found", found, c + "coded", "yes");
        of(more).forEach((field, value) -> form.put(c + field, value));
        return form;
    }

    /** A photograph of nothing. */
    public static Multipart photograph(String csrf, String key) throws IOException {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "jpeg", jpeg);
        return new Multipart().field("_csrf", csrf).field("formKey", key).file("photo", "p.jpg", jpeg.toByteArray());
    }
}
