package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.desk.Answer;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something to decide: one cause, such as a part that is short at a depot, whatever number of trucks it concerns.
 *
 * @param subject names the question at its depot: {@code short KV-8140}
 * @param depot the depot
 * @param state what it depends on; another state asks again
 * @param mark its shape
 * @param title what it is about
 * @param lead what is known, with figures
 * @param trucks trucks it concerns
 * @param proposal money of what is proposed, in the site's currency
 * @param stake money of leaving it, by which the costliest comes first
 * @param options what can be done, the proposed one first
 */
public record DeskQuestion(
        String subject,
        String depot,
        String state,
        String mark,
        String title,
        String lead,
        List<String> trucks,
        double proposal,
        double stake,
        List<Option> options) {
    public DeskQuestion {
        trucks = List.copyOf(trucks);
        options = List.copyOf(options);
    }

    /**
     * An answer.
     *
     * @param label what its button says
     * @param money what it costs, with its sign, or empty where it is no matter of money
     * @param hours labour it takes more, with its sign
     * @param risk what it does to the chance of failing on the road
     * @param words what happens
     * @param answer what the button does, or null where it leads to a page
     * @param link the page, or empty
     */
    public record Option(
            String label,
            String money,
            String hours,
            String risk,
            String words,
            @Nullable Answer answer,
            String link) {
        static Option of(String label, String money, String hours, String risk, String words, Answer answer) {
            return new Option(label, money, hours, risk, words, answer, "");
        }

        static Option page(String label, String words, String link) {
            return new Option(label, "", "", "", words, null, link);
        }

        /** The place of the menu that its page belongs to. */
        public String place() {
            return link.replaceFirst("^(/[a-z]*).*", "$1");
        }

        /** Names the answer in its form. */
        public String act() {
            return answer == null ? "" : answer.kind().name();
        }
    }

    /** The answer of a kind. */
    @Nullable
    Option find(String act) {
        return options.stream()
                .filter(option -> option.answer() != null && option.act().equals(act))
                .findFirst()
                .orElse(null);
    }
}
