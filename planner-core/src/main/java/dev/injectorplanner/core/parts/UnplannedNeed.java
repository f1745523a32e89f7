package dev.injectorplanner.core.parts;

/**
 * What a depot keeps of an injector for failures that no plan foresees: until an order placed at the buyer's next look
 * has come, the stock is to suffice with the service level.
 *
 * @param depot the depot
 * @param part part number
 * @param injectors injectors in service there that it would replace
 * @param daysLeast days covered when the supplier is as quick as usual
 * @param daysMost days covered at the longest lead time
 * @param expected failures to expect within those days, on average
 * @param target smallest stock that suffices with the service level, pieces
 * @param free pieces that planned visits leave free by then, open purchase lines and advised orders counted
 * @param missing pieces to order for it, 0 or more
 * @param covered chance that the free pieces suffice
 * @param errorBound how far the chances may be off, 0 where exact
 * @param method how the distribution was worked out
 */
public record UnplannedNeed(
        String depot,
        String part,
        int injectors,
        int daysLeast,
        int daysMost,
        double expected,
        int target,
        double free,
        double missing,
        double covered,
        double errorBound,
        String method) {}
