package outshop.plan;

import outshop.input.Place;

/** A finding that the owner accepts, with the reason. */
public record Accepted(String rule, String where, String reason, Place place) {}
