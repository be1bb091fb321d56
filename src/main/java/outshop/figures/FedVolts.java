package outshop.figures;

import outshop.circuit.LoadCase;
import outshop.plan.Fitted;
import outshop.units.Amount;

/** Volts that reach a part under load; missing, not zero, where the wiring does not feed it. */
public final class FedVolts {
  private final Bench bench;
  private final NoLoad noLoad;

  FedVolts(Bench bench, NoLoad noLoad) {
    this.bench = bench;
    this.noLoad = noLoad;
  }

  public static FedVolts of(Bench bench) {
    return new FedVolts(bench, new NoLoad(bench));
  }

  /** Volts between two terminals of a part in a case. */
  public Amount volts(Fitted part, LoadCase loadCase, String plus, String minus) {
    String owner = part.name() + ".";
    return volts(part.name(), loadCase, owner + plus, owner + minus);
  }

  Amount volts(String part, LoadCase loadCase, String plus, String minus) {
    return noLoad.feeds(plus, minus) ? bench.cases().volts(loadCase, plus, minus) : unfed(part);
  }

  private Amount unfed(String part) {
    return noLoad
        .patternWanted()
        .orElseGet(
            () ->
                Amount.missing(
                    part,
                    "wires that feed it",
                    "join its input to the pack in the plan's wiring, both poles"));
  }
}
