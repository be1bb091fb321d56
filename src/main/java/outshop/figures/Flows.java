package outshop.figures;

import outshop.circuit.LoadCase;
import outshop.units.Amount;

/**
 * The current in each element by what the locomotive does, the greatest over every charge of the
 * pack. Missing, not zero, where the circuit is not closed or no motor turns.
 */
public final class Flows {
  private final Demands demands;

  private Flows(Bench bench) {
    this.demands = new Demands(bench);
  }

  public static Flows of(Bench bench) {
    return new Flows(bench);
  }

  /** Amps through an element. */
  public Amount amps(LoadCase.Drive drive, String element) {
    return demands.doing(drive, element);
  }

  /** Whether an amount is known and as good as no current. */
  public static boolean isNothing(Amount amps) {
    return Demands.isNothing(amps);
  }
}
