package dev.injectorplanner.app.web;

import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.testkit.WorkshopForms;
import java.net.URI;
import java.util.Map;

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
        mechanic.post("/store", "/store/receiving", WorkshopForms.twoReceived());
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
        start(mechanic, "job-1");
        notes.take(
                "/start/{truck}/call-off",
                "mechanic",
                "call a job off",
                () -> mechanic.post("/store", "/start/T-1/call-off", AuditNotes.form("job", job())));
        start(mechanic, "job-2");
        notes.take(
                "/bay/{truck}/swap",
                "mechanic",
                "allocate a kit",
                () -> mechanic.post("/store", "/bay/T-1/swap", swap()));
    }

    private void start(Visitor mechanic, String key) throws Exception {
        Map<String, String> form = WorkshopForms.started(key);
        notes.take("/start/{truck}", "mechanic", "start a job", () -> mechanic.post("/store", "/start/T-1", form));
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
        String token = mechanic.csrf("/store");
        notes.take(
                "/bay/{truck}/photos",
                "mechanic",
                "add a photograph",
                () -> mechanic.send(WorkshopForms.photograph(token, "photo-1")
                        .field("note", "worn tip")
                        .to(address.resolve("/bay/T-1/photos"))));
        long photo = new Photos(app.application().store()).ofTruck("T-1").get(0).id();
        notes.take(
                "/bay/{truck}/photos/{id}/remove",
                "mechanic",
                "remove a photograph",
                () -> mechanic.post("/store", "/bay/T-1/photos/" + photo + "/remove", Map.of()));
    }

    private void changedOver(Visitor mechanic) throws Exception {
        Map<String, String> done = WorkshopForms.closed("key-job");
        done.putAll(WorkshopForms.fitted(1, "FAILED", "asPicked", "yes"));
        done.putAll(WorkshopForms.fitted(2, "WORN", "asPicked", "yes"));
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
