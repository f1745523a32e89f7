package dev.injectorplanner.imports.file;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Meters of vehicles from open telematics standards, as rows of readings. rFMS vehicle status (JSON): {@code
 * vehicleStatusResponse.vehicleStatuses[]} with {@code vin}, {@code createdDateTime}, {@code hrTotalVehicleDistance} (metres)
 * and {@code totalEngineHours}. ISO 15143-3 snapshot (XML): {@code Fleet/Equipment} with {@code EquipmentHeader} ({@code
 * EquipmentID}, {@code PIN}), {@code CumulativeOperatingHours/Hour} and {@code Distance/Odometer} with {@code OdometerUnits}.
 * Field names as programs that use both publish them; the standards' texts were not at hand, and that {@code OdometerUnits} is
 * kilometre or mile is from memory.
 */
final class TelematicsFile implements RawFile, RawSheet {
    private static final List<String> HEADINGS = List.of("truck", "taken_at", "odometer_km", "engine_hours");
    private static final long MOST_BYTES = 256L << 20;
    private static final double METRES = 1_000;

    private final List<List<String>> rows = new ArrayList<>();
    private final String remark;

    private TelematicsFile(String remark) {
        this.remark = remark;
    }

    /** @param truckOf the truck of a VIN or of an equipment's name; what is not known comes back as it is */
    static TelematicsFile status(Path file, UnaryOperator<String> truckOf) {
        JsonNode statuses;
        try {
            refuseLarge(file);
            statuses = JsonMapper.shared()
                    .readTree(file.toFile())
                    .path("vehicleStatusResponse")
                    .path("vehicleStatuses");
        } catch (JacksonException e) {
            throw new FileRefusedException(file, "is damaged or cut short JSON", "download it again", e);
        }
        if (!statuses.isArray()) {
            throw new FileRefusedException(
                    file,
                    "is JSON, but no rFMS vehicle status (vehicleStatusResponse.vehicleStatuses)",
                    "download the vehicle status, or save a table as CSV or XLSX");
        }
        TelematicsFile read = new TelematicsFile("rFMS vehicle status: distance in metres, read as km");
        for (JsonNode status : statuses) {
            JsonNode metres = status.path("hrTotalVehicleDistance");
            read.rows.add(List.of(
                    truckOf.apply(text(status, "vin")),
                    text(status, "createdDateTime"),
                    metres.isNumber()
                            ? Require.plain(metres.doubleValue() / METRES)
                            : text(status, "hrTotalVehicleDistance"),
                    text(status, "totalEngineHours")));
        }
        return read;
    }

    private static String text(JsonNode status, String field) {
        JsonNode node = status.path(field);
        return node.isNumber() ? Require.plain(node.doubleValue()) : node.isString() ? node.stringValue() : "";
    }

    static TelematicsFile snapshot(Path file, UnaryOperator<String> truckOf) {
        refuseLarge(file);
        TelematicsFile read = new TelematicsFile("ISO 15143-3 snapshot");
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (InputStream in = Files.newInputStream(file)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            boolean fleet = false;
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamReader.START_ELEMENT) {
                    fleet |= xml.getLocalName().equals("Fleet");
                    if (fleet && xml.getLocalName().equals("Equipment")) {
                        read.equipment(xml, truckOf);
                    }
                }
            }
            if (!fleet) {
                throw new FileRefusedException(
                        file,
                        "is XML, but no ISO 15143-3 snapshot (Fleet)",
                        "save a table as CSV or XLSX and load that");
            }
        } catch (XMLStreamException e) {
            throw new FileRefusedException(file, "is damaged or cut short XML", "download it again", e);
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read to its end", "check the disk, or copy it again", e);
        }
        return read;
    }

    /** One machine: each meter with the moment at which it was read; both in one row where that is the same. */
    private void equipment(XMLStreamReader xml, UnaryOperator<String> truckOf) throws XMLStreamException {
        String id = "";
        String pin = "";
        String unit = "";
        Meter distance = new Meter("", "");
        Meter hours = new Meter("", "");
        String moment = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals("Equipment")) {
                break;
            }
            if (event != XMLStreamReader.START_ELEMENT) {
                continue;
            }
            String said = xml.getAttributeValue(null, "datetime");
            moment = said == null ? moment : said;
            switch (xml.getLocalName()) {
                case "EquipmentID" -> id = xml.getElementText().strip();
                case "PIN", "SerialNumber" ->
                    pin = pin.isEmpty() ? xml.getElementText().strip() : pin;
                case "OdometerUnits" -> unit = xml.getElementText().strip();
                case "Odometer" ->
                    distance = new Meter(moment, xml.getElementText().strip());
                case "Hour" ->
                    hours = hours.value().isEmpty()
                            ? new Meter(moment, xml.getElementText().strip())
                            : hours;
                case "CumulativeIdleHours" -> skip(xml);
                default -> {}
            }
        }
        String truck = truckOf.apply(id);
        add(truck.equals(id) && !pin.isEmpty() ? knownOr(truckOf, pin, id) : truck, distance.in(unit), hours);
    }

    private static String knownOr(UnaryOperator<String> truckOf, String pin, String id) {
        String byPin = truckOf.apply(pin);
        return byPin.equals(pin) && !id.isEmpty() ? id : byPin;
    }

    private static void skip(XMLStreamReader xml) throws XMLStreamException {
        for (int depth = 1; depth > 0 && xml.hasNext(); ) {
            int event = xml.next();
            depth += event == XMLStreamReader.START_ELEMENT ? 1 : event == XMLStreamReader.END_ELEMENT ? -1 : 0;
        }
    }

    private record Meter(String moment, String value) {
        Meter in(String unit) {
            boolean miles = unit.toLowerCase(java.util.Locale.ROOT).startsWith("mi");
            if (!miles || !value.matches("[0-9]+(\\.[0-9]+)?")) {
                return this;
            }
            return new Meter(
                    moment, Require.plain(dev.injectorplanner.core.units.Units.milesToKm(Double.parseDouble(value))));
        }
    }

    private void add(String truck, Meter distance, Meter hours) {
        if (distance.value().isEmpty() && hours.value().isEmpty()) {
            return; // a machine that reports other things than meters
        }
        if (distance.moment().equals(hours.moment())
                || hours.value().isEmpty()
                || distance.value().isEmpty()) {
            String moment = distance.value().isEmpty() ? hours.moment() : distance.moment();
            rows.add(List.of(truck, moment, distance.value(), hours.value()));
        } else {
            rows.add(List.of(truck, distance.moment(), distance.value(), ""));
            rows.add(List.of(truck, hours.moment(), "", hours.value()));
        }
    }

    private static void refuseLarge(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new FileRefusedException(file, "is larger than 256 MB", "download it in parts");
            }
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check that you have permission to read it", e);
        }
    }

    @Override
    public List<RawSheet> sheets() {
        return List.of(this);
    }

    @Override
    public @Nullable String name() {
        return null;
    }

    @Override
    public boolean hidden() {
        return false;
    }

    @Override
    public char delimiter() {
        return ',';
    }

    @Override
    public boolean countsCells() {
        return true;
    }

    @Override
    public void read(RawRows to) {
        to.row(1, HEADINGS.toArray(String[]::new));
        for (int at = 0; at < rows.size(); at++) {
            to.row(at + 2L, rows.get(at).toArray(String[]::new));
        }
    }

    @Override
    public List<String> remarks() {
        return List.of(remark);
    }

    @Override
    public void close() {
        // nothing stays open
    }
}
