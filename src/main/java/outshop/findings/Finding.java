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
 * @param wording its sentences
 * @param demand what stands against the limit, where the rule compares
 * @param limit what it may be
 * @param mark the bound that decided, where the rule compares: the one that was passed, or for what
 *     is fine the first one ahead
 * @param past how far past the bound, as a share of it (0.05 is five per cent past); for what is
 *     fine, the room left, below zero
 * @param wants what would have to be known, where the rule cannot tell
 * @param sureness the least sure origin among the values
 * @param softened whether the outcome was lowered because it rests on an assumed value
 */
public record Finding(
    String rule,
    Outcome outcome,
    Consequence consequence,
    At at,
    Wording wording,
    Optional<Amount.Known> demand,
    Optional<Amount.Known> limit,
    Optional<Mark> mark,
    double past,
    String why,
    String basis,
    String source,
    List<Want> wants,
    Origin sureness,
    boolean softened) {

  public Finding {
    wants = List.copyOf(wants);
  }

  /** A finding whose sentences are there already. */
  public Finding(
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
    this(
        rule,
        outcome,
        consequence,
        at,
        Wording.of(headline, working, cures, assumed),
        demand,
        limit,
        mark,
        past,
        why,
        basis,
        source,
        wants,
        sureness,
        softened);
  }

  /** As {@link Wording#headline}. */
  public String headline() {
    return wording.headline();
  }

  /** As {@link Wording#working}. */
  public List<Step> working() {
    return wording.working();
  }

  /** As {@link Wording#cures}. */
  public List<String> cures() {
    return wording.cures();
  }

  /** As {@link Wording#assumed}. */
  public List<String> assumed() {
    return wording.assumed();
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
