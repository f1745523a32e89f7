package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Each route with each role. "in" is let in (whatever the page then answers), "no" is 403, "ask" leads to the form. The
 * table is written by hand from what each reader is here to do, not from the program's own list.
 */
@PlannerRuns
class RouteTableTest {
    private static final String TABLE = """
            route                        nobody manager buyer storeman mechanic administrator
            GET  /sign-in                in     in      in    in       in       in
            GET  /actuator/health        in     in      in    in       in       in
            GET  /planner.css            in     in      in    in       in       in
            GET  /                       ask    in      in    in       in       in
            GET  /password               ask    in      in    in       in       in
            GET  /week                   ask    in      in    in       in       in
            POST /week/decide            no     in      no    no       no       no
            POST /week/undo              no     in      no    no       no       no
            POST /week/x                 no     in      no    no       no       no
            GET  /plan                   ask    in      in    no       no       in
            POST /plan/x                 no     in      no    no       no       no
            GET  /trucks                 ask    in      in    in       in       in
            GET  /trucks/T1              ask    in      in    in       in       in
            POST /trucks/views           no     in      in    in       in       in
            POST /trucks/views/forget    no     in      in    in       in       in
            POST /trucks/x               no     in      no    no       no       no
            GET  /find                   ask    in      in    in       in       in
            GET  /sheets/trucks.xlsx     ask    in      in    in       in       in
            GET  /office.css             in     in      in    in       in       in
            GET  /find.js                in     in      in    in       in       in
            GET  /live.js                in     in      in    in       in       in
            GET  /week/state?plan=1      ask    in      in    in       in       in
            GET  /order                  ask    in      in    no       no       in
            POST /order/x                no     in      in    no       no       no
            GET  /orders                 ask    in      in    in       no       in
            POST /orders/x               no     in      in    in       no       no
            GET  /returns                ask    in      in    in       no       in
            POST /returns/x              no     in      in    in       no       no
            GET  /stock                  ask    in      in    in       no       in
            POST /stock/x                no     in      in    in       no       no
            GET  /coolant                ask    in      in    in       in       in
            GET  /bay                    ask    in      no    no       in       in
            POST /bay/x                  no     in      no    no       in       no
            GET  /start                  ask    in      no    no       in       no
            POST /start/x                no     in      no    no       in       no
            GET  /alerts                 ask    in      in    no       no       in
            POST /alerts/x               no     in      in    no       no       no
            GET  /life                   ask    in      in    no       no       in
            POST /life/x                 no     in      no    no       no       no
            GET  /outlook                ask    in      in    no       no       in
            GET  /outlook/outlook.xlsx   ask    in      in    no       no       in
            GET  /imports                ask    in      in    no       no       in
            POST /imports/x              no     in      in    no       no       in
            GET  /results                ask    in      in    no       no       in
            GET  /results/results.xlsx   ask    in      in    no       no       in
            GET  /replay                 ask    in      no    no       no       in
            POST /replay                 no     in      no    no       no       no
            GET  /jobs                   ask    in      no    no       no       in
            POST /jobs/times             no     in      no    no       no       in
            POST /jobs/run               no     in      no    no       no       in
            GET  /settings               ask    in      no    no       no       in
            GET  /settings/figures       ask    in      no    no       no       in
            POST /settings/figures       no     in      no    no       no       no
            GET  /settings/site          ask    in      no    no       no       in
            POST /settings/site          no     no      no    no       no       in
            GET  /settings/families      ask    in      no    no       no       in
            GET  /settings/families/row  ask    in      no    no       no       in
            POST /settings/families/save no     in      no    no       no       in
            POST /settings/families/remove no     in      no    no       no       in
            GET  /settings/access        ask    in      no    no       no       in
            POST /settings/access/save   no     in      no    no       no       in
            GET  /settings/rules         ask    in      no    no       no       in
            POST /settings/rules/save    no     in      no    no       no       no
            POST /settings/rules/remove  no     in      no    no       no       no
            GET  /settings/depots        ask    in      no    no       no       in
            POST /settings/depots/save   no     in      no    no       no       no
            GET  /settings/people        ask    no      no    no       no       in
            POST /settings/people/add    no     no      no    no       no       in
            POST /settings/people/change no     no      no    no       no       in
            POST /settings/people/disable no     no      no    no       no       in
            POST /settings/people/password no     no      no    no       no       in
            GET  /settings/tokens        ask    no      no    no       no       in
            POST /settings/tokens/make   no     no      no    no       no       in
            POST /settings/tokens/revoke no     no      no    no       no       in
            GET  /settings/audit         ask    no      no    no       no       in
            GET  /settings/audit.csv     ask    no      no    no       no       in
            GET  /actuator               ask    no      no    no       no       no
            GET  /actuator/env           ask    no      no    no       no       no
            GET  /error                  ask    no      no    no       no       no
            GET  /elsewhere              ask    no      no    no       no       no
            POST /elsewhere              no     no      no    no       no       no
            PUT  /plan                   no     no      no    no       no       no
            DELETE /trucks               no     no      no    no       no       no
            """;

    @Test
    void every_route_lets_in_whom_it_is_for(URI address) throws Exception {
        List<Visitor> visitors = new ArrayList<>(List.of(Visitor.nobody(address)));
        for (Role role : Role.values()) {
            visitors.add(Visitor.as(role, address));
        }
        List<String> found = new ArrayList<>();
        List<String> lines = TABLE.lines().skip(1).toList();
        for (String line : lines) {
            String[] cells = line.split("\\s+");
            StringBuilder row = new StringBuilder(cells[0] + " " + cells[1]);
            for (Visitor visitor : visitors) {
                row.append(' ').append(answer(visitor, cells[0], cells[1]));
            }
            found.add(row.toString());
        }
        assertThat(found)
                .containsExactlyElementsOf(
                        lines.stream().map(line -> line.replaceAll("\\s+", " ")).toList());
    }

    private static String answer(Visitor visitor, String method, String path) throws Exception {
        String token = Visitor.form(Map.of("_csrf", visitor.csrf("/sign-in")));
        HttpResponse<String> answer = switch (method) {
            case "GET" -> visitor.get(path);
            case "POST" -> visitor.postBare(path, token);
            default -> visitor.sendBare(method, path, token);
        };
        boolean asks = answer.statusCode() == 302
                && answer.headers().firstValue("Location").orElse("").contains("/sign-in");
        return answer.statusCode() == 403 || asks && !method.equals("GET") ? "no" : asks ? "ask" : "in";
    }
}
