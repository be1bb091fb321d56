package outshop.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.At;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Want;

/** Builds one finding for the renderers' tests, step by step. */
public final class FindingBuilder {
  private final String rule;
  private final Outcome outcome;
  private final Consequence consequence;
  private At at = new At(Station.PLAN, "plan", "the plan");
  private String headline = "";
  private Optional<Amount.Known> demand = Optional.empty();
  private Optional<Amount.Known> limit = Optional.empty();
  private Optional<Finding.Mark> mark = Optional.empty();
  private double past;
  private final List<Finding.Step> working = new ArrayList<>();
  private String why = "";
  private final List<String> cures = new ArrayList<>();
  private String basis = "cp";
  private String source = "none";
  private final List<String> assumed = new ArrayList<>();
  private final List<Want> wants = new ArrayList<>();
  private Origin sureness = Origin.DATA_SHEET;
  private boolean softened;

  private FindingBuilder(String rule, Outcome outcome, Consequence consequence) {
    this.rule = rule;
    this.outcome = outcome;
    this.consequence = consequence;
  }

  public static FindingBuilder of(String rule, Outcome outcome, Consequence consequence) {
    return new FindingBuilder(rule, outcome, consequence);
  }

  public FindingBuilder at(Station station, String name, String described) {
    at = new At(station, name, described);
    return this;
  }

  public FindingBuilder says(String words) {
    headline = words;
    return this;
  }

  /** A comparison; the share past the bound follows from the numbers. */
  public FindingBuilder compares(
      Amount.Known has, boolean upper, Amount.Known against, double factor) {
    demand = Optional.of(has);
    limit = Optional.of(against);
    double bound = against.value() * factor;
    mark = Optional.of(new Finding.Mark(bound, upper));
    past = has.value() == bound ? 0 : upper ? has.value() / bound - 1 : 1 - has.value() / bound;
    return this;
  }

  public FindingBuilder step(String what, String value, String how) {
    working.add(new Finding.Step(what, value, how));
    return this;
  }

  public FindingBuilder why(String words) {
    why = words;
    return this;
  }

  public FindingBuilder cure(String words) {
    cures.add(words);
    return this;
  }

  public FindingBuilder basis(String codes, String name) {
    basis = codes;
    source = name;
    return this;
  }

  public FindingBuilder assumes(String words) {
    assumed.add(words);
    sureness = Origin.ASSUMED;
    return this;
  }

  public FindingBuilder softened() {
    softened = true;
    return this;
  }

  public FindingBuilder wants(Want want) {
    wants.add(want);
    return this;
  }

  public FindingBuilder sureness(Origin origin) {
    sureness = origin;
    return this;
  }

  public Finding build() {
    return new Finding(
        rule,
        outcome,
        consequence,
        at,
        headline,
        demand,
        limit,
        mark,
        past,
        working,
        why,
        cures,
        basis,
        source,
        assumed,
        wants,
        sureness,
        softened);
  }
}
