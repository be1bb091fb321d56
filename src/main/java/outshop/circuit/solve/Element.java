package outshop.circuit.solve;

/**
 * A two-terminal element between two nets (a regulator has two pairs). Current counts as positive
 * from {@code a} through the element to {@code b}. All values in volts, amps, ohms, watts;
 * resistances are above zero.
 */
public sealed interface Element {
  String name();

  /** The net it starts at. */
  int a();

  /** The net it ends at. */
  int b();

  /**
   * A battery: {@code emfVolts} behind {@code ohms}; {@code a} is its plus. Its current is negative
   * while it delivers.
   */
  record Source(String name, int a, int b, double emfVolts, double ohms) implements Element {}

  /** A wire, contact, fuse, winding or heater. */
  record Resistor(String name, int a, int b, double ohms) implements Element {}

  /**
   * A path that conducts one way only, with a fixed drop and a resistance behind it: a bridge, a
   * transistor output, a LED. Current is {@code (V - volts) / ohms} above the drop, and only
   * leakage ({@code V x LEAK}) below it: the larger of the two, so that it has no step where one
   * takes over from the other. {@code ohms x LEAK} stays below 1.
   */
  record Drop(String name, int a, int b, double volts, double ohms) implements Element {
    /**
     * Conductance below the drop, in siemens: too little to matter, enough to keep the network
     * solvable.
     */
    public static final double LEAK = 1e-9;
  }

  /**
   * A load that draws a measured current. Below {@link #KNEE_VOLTS} the current falls in proportion
   * to the voltage, so that a supply that collapses is found as collapsed, not as a negative
   * voltage: {@code amps x min(1, V / KNEE_VOLTS)}. At a reversed voltage it only leaks ({@code V x
   * Drop.LEAK}), so that loads in series still share the voltage out.
   */
  record Sink(String name, int a, int b, double amps) implements Element {
    public static final double KNEE_VOLTS = 1.0;
  }

  /**
   * A load that draws a constant power: {@code watts / V}. Below {@code kneeVolts} its current
   * falls in proportion to the voltage, {@code watts x V / kneeVolts^2}, which meets the other at
   * the knee. At a reversed voltage it only leaks, as a {@link Sink} does.
   */
  record PowerSink(String name, int a, int b, double watts, double kneeVolts) implements Element {}

  /**
   * A charger in its constant-current phase: pushes {@code amps} out of {@code a}, its plus. Its
   * current is {@code -amps}. Its voltage has no limit of its own, so something must take the
   * current up: without that there is {@link NoSolution}.
   */
  record Supply(String name, int a, int b, double amps) implements Element {}

  /**
   * A regulator: holds {@code outVolts} behind {@code outOhms} between {@code outA} and {@code
   * outB}. Its input draws the output current ({@code efficiency == 0}, linear) or {@code outVolts
   * x output amps / (input volts x efficiency)} (switching). The current of the element is that of
   * its input.
   *
   * <p>It only steps down: with {@code outVolts} or less at the input it holds the input volts
   * instead, and a switching one then draws {@code output amps / efficiency}; with a reversed input
   * it holds nothing. It gives no current backwards: where something else lifts the output above
   * what it holds, only leakage flows back, and the input only leaks too ({@code input volts x
   * Drop.LEAK}, where that is more than it draws). All of this joins without a step.
   */
  record Regulator(
      String name,
      int a,
      int b,
      int outA,
      int outB,
      double outVolts,
      double outOhms,
      double efficiency)
      implements Element {}
}
