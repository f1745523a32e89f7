package org.springframework.planted;

/** Stands in for a class of the web framework, so that the rule about it can be shown to bite. */
public final class StandIn {}
