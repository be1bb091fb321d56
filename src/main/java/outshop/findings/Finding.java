package outshop.findings;

import java.util.List;
import java.util.Optional;
import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Want;

/**
 * One thing a rule found, complete: every renderer shows it from here and computes nothing.
 *
 * @param rule family and name, such as {@code voltage/receiver-over-maximum}
 * @param headline one sentence with the decisive numbers, without a full stop
 * @param demand what stands against the limit, where the rule compares
 * @param limit what it may be
 * @param mark the bound that decided, where the rule compares: the one that was passed, or for what
 *     is fine the first one ahead
 * @param past how far past the bound, as a share of it (0.05 is five per cent past); for what is
 *     fine, the room left, below zero
 * @param working every value that entered, in the order in which they were used
 * @param assumed the values nobody stated on which the figure stands
 * @param wants what would have to be known, where the rule cannot tell
 * @param sureness the least sure origin among the values
 * @param softened whether the outcome was lowered because it rests on an assumed value
 */
public record Finding(
    String rule,
    Outcome outcome,
    Consequence consequence,
    At at,
    String headline,
    Optional<Amount.Known> demand,
    Optional<Amount.Known> limit,
    Optional<Mark> mark,
    double past,
    List<Step> working,
    String why,
    List<String> cures,
    String basis,
    String source,
    List<String> assumed,
    List<Want> wants,
    Origin sureness,
    boolean softened) {

  public Finding {
    working = List.copyOf(working);
    cures = List.copyOf(cures);
    assumed = List.copyOf(assumed);
    wants = List.copyOf(wants);
  }

  /**
   * A bound as a value: the limit times the rule's factor.
   *
   * @param value in the limit's unit
   * @param upper whether the demand may be at most this; else it must be at least this
   */
  public record Mark(double value, boolean upper) {}

  /**
   * One line of the working.
   *
   * @param what the value's label
   * @param value the value with its unit
   * @param how the formula or the source
   */
  public record Step(String what, String value, String how) {}
}
