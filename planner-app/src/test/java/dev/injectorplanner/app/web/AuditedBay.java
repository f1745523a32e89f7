package dev.injectorplanner.app.web;

import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.Visitor;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.util.Map;
import javax.imageio.ImageIO;

/** What a mechanic changes at the truck beside the close-out of a planned visit. */
final class AuditedBay {
    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedBay(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        Visitor mechanic = Visitor.as(Role.MECHANIC, address);
        mechanic.post(
                "/store",
                "/store/receiving",
                AuditNotes.form(
                        "depot",
                        "North",
                        "part",
                        "INJ-4R",
                        "origin",
                        "REMAN",
                        "u0.serial",
                        "R7",
                        "u0.code",
                        "GGGG",
                        "u1.serial",
                        "R8",
                        "u1.code",
                        "HHHH"));
        job(mechanic);
        photographs(mechanic);
        notes.take(
                "/bay/{truck}/look/{kind}",
                "mechanic",
                "note a diagnosis",
                () -> mechanic.post(
                        "/store", "/bay/T-1/look/leak", AuditNotes.form("state.filter-housing", "IN_ORDER")));
        changedOver(mechanic);
    }

    private void job(Visitor mechanic) throws Exception {
        Map<String, String> start = AuditNotes.form("formKey", "job-1", "failed", "1", "set", "1 2");
        notes.take("/start/{truck}", "mechanic", "start a job", () -> mechanic.post("/store", "/start/T-1", start));
        notes.take(
                "/start/{truck}/call-off",
                "mechanic",
                "call a job off",
                () -> mechanic.post("/store", "/start/T-1/call-off", AuditNotes.form("job", job())));
        start.put("formKey", "job-2");
        notes.take("/start/{truck}", "mechanic", "start a job", () -> mechanic.post("/store", "/start/T-1", start));
        notes.take(
                "/bay/{truck}/swap",
                "mechanic",
                "allocate a kit",
                () -> mechanic.post("/store", "/bay/T-1/swap", swap()));
    }

    private String job() {
        return String.valueOf(new BayJobs(app.application().store())
                .findOpen("T-1")
                .orElseThrow()
                .id());
    }

    private Map<String, String> swap() {
        Map<Integer, StockInjector> kit = new SerialisedStock(app.application().store()).kitOf("T-1");
        return AuditNotes.form(
                "swap", "1 2", "kit.1", kit.get(1).serial(), "kit.2", kit.get(2).serial());
    }

    private void photographs(Visitor mechanic) throws Exception {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "jpeg", jpeg);
        String token = mechanic.csrf("/store");
        notes.take(
                "/bay/{truck}/photos",
                "mechanic",
                "add a photograph",
                () -> mechanic.send(new Multipart()
                        .field("_csrf", token)
                        .field("formKey", "photo-1")
                        .field("note", "worn tip")
                        .file("photo", "p.jpg", jpeg.toByteArray())
                        .to(address.resolve("/bay/T-1/photos"))));
        long photo = new Photos(app.application().store()).ofTruck("T-1").get(0).id();
        notes.take(
                "/bay/{truck}/photos/{id}/remove",
                "mechanic",
                "remove a photograph",
                () -> mechanic.post("/store", "/bay/T-1/photos/" + photo + "/remove", Map.of()));
    }

    private void changedOver(Visitor mechanic) throws Exception {
        Map<String, String> done = AuditNotes.form(
                "formKey",
                "key-job",
                "doneOn",
                "2026-03-02",
                "labourHours",
                "3",
                "c1.fate",
                "fitted",
                "c1.found",
                "FAILED",
                "c1.asPicked",
                "yes",
                "c1.coded",
                "yes",
                "c2.fate",
                "fitted",
                "c2.found",
                "WORN",
                "c2.asPicked",
                "yes",
                "c2.coded",
                "yes",
                "do",
                "close");
        notes.take("/bay/{truck}", "mechanic", "close out a visit", () -> mechanic.post("/store", "/bay/T-1", done));
        notes.take(
                "/bay/{truck}/changed-over",
                "mechanic",
                "correct a close-out",
                () -> mechanic.post(
                        "/store",
                        "/bay/T-1/changed-over",
                        AuditNotes.form(
                                "first",
                                "1",
                                "second",
                                "2",
                                "coded",
                                "yes",
                                "version",
                                String.valueOf(new CloseOuts(app.application().store())
                                        .ofTruck("T-1")
                                        .get(0)
                                        .id()))));
    }
}
