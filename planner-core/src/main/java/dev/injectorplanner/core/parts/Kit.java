package dev.injectorplanner.core.parts;

/**
 * What one visit takes of a part.
 *
 * @param expected pieces it will use on average
 * @param pieces pieces to put into the kit, so that they suffice with the service level; the rest goes back
 */
public record Kit(double expected, double pieces) {}
