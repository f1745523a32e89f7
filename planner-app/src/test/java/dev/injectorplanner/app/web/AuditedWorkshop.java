package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.util.Map;

/** What a storeman and a mechanic change of a planned visit, and a manager after them. */
final class AuditedWorkshop {
    private static final String WEEK = "2026-W10";

    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedWorkshop(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        workshop();
    }

    private void workshop() throws Exception {
        Visitor mechanic = Visitor.as(Role.MECHANIC, address);
        String kits = "/store/kits";
        notes.take(
                "/store/receiving",
                "mechanic",
                "receive injectors",
                () -> mechanic.post(
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
                                "R1",
                                "u0.code",
                                "AAAA",
                                "u1.serial",
                                "R2",
                                "u1.code",
                                "BBBB",
                                "u2.serial",
                                "R3",
                                "u2.code",
                                "CCCC")));
        notes.take(
                kits,
                "mechanic",
                "allocate a kit",
                () -> mechanic.post("/store", kits, AuditNotes.form("depot", "North", "truck", "T-1", "do", "fill")));
        String injector = String.valueOf(new SerialisedStock(app.application().store())
                .kitOf("T-1")
                .get(2)
                .id());
        AuditNotes.Sending release = () ->
                mechanic.post("/store", kits, AuditNotes.form("depot", "North", "injector", injector, "do", "release"));
        notes.take(kits, "mechanic", "release an injector from a kit", release);
        notes.take(
                kits,
                "mechanic",
                "allocate a kit",
                () -> mechanic.post(
                        "/store",
                        kits,
                        AuditNotes.form(
                                "depot",
                                "North",
                                "injector",
                                injector,
                                "truck",
                                "T-2",
                                "cylinder",
                                "3",
                                "do",
                                "bind")));
        notes.take(kits, "mechanic", "release an injector from a kit", release);
        notes.take(
                kits,
                "mechanic",
                "remove an injector from stock",
                () -> mechanic.post(
                        "/store",
                        kits,
                        AuditNotes.form(
                                "depot", "North", "injector", injector, "do", "off", "why", "sent to the test bench")));
        notes.take(
                "/bay/{truck}",
                "mechanic",
                "close out a visit",
                () -> mechanic.post("/store", "/bay/T-1", closeOut("key-1", "FAILED")));
        long id = new CloseOuts(app.application().store()).ofTruck("T-1").get(0).id();
        Visitor manager = Visitor.as(Role.MANAGER, address);
        Map<String, String> corrected = closeOut("key-2", "WORN");
        corrected.put("why", "it was worn");
        notes.take(
                "/bay/{truck}/close-outs/{id}",
                "manager",
                "correct a close-out",
                () -> manager.post("/store", "/bay/T-1/close-outs/" + id, corrected));
        assertThat(notes.of("/bay/{truck}/close-outs/{id}"))
                .contains("version 1; cylinder 1: found failed, serial R1 fitted, code AAAA")
                .contains("version 2; cylinder 1: found worn", "because: it was worn");
        long newest =
                new CloseOuts(app.application().store()).ofTruck("T-1").get(0).id();
        notes.take(
                "/bay/{truck}/close-outs/{id}/void",
                "manager",
                "void a close-out",
                () -> manager.post(
                        "/store", "/bay/T-1/close-outs/" + newest + "/void", AuditNotes.form("why", "wrong truck")));
    }

    private static Map<String, String> closeOut(String key, String found) {
        return AuditNotes.form(
                "formKey",
                key,
                "week",
                WEEK,
                "doneOn",
                "2026-03-02",
                "labourHours",
                "3.5",
                "odometer",
                "124000",
                "c1.fate",
                "fitted",
                "c1.found",
                found,
                "c1.serial",
                "R1",
                "c1.code",
                "AAAA",
                "c1.programmed",
                "yes",
                "c1.compared",
                "yes",
                "c2.fate",
                "left",
                "c2.reason",
                "bolt seized",
                "do",
                "close");
    }
}
