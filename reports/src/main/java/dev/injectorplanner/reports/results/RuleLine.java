package dev.injectorplanner.reports.results;

/**
 * What a rule of the site costs: the plan with it and without it, in expected money.
 *
 * @param rule the rule in words
 * @param price what it costs; below zero it saves
 */
public record RuleLine(
        String rule, double price, int visitsWith, int visitsWithout, int injectorsWith, int injectorsWithout) {}
