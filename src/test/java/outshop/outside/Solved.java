package outshop.outside;

import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Sketch;
import outshop.circuit.solve.Solution;

/** A textbook's circuit, solved when it is asked. */
record Solved(Sketch circuit) {

  DoubleSupplier amps(String element) {
    return figure(solution -> solution.amps(element));
  }

  DoubleSupplier milliamps(String element) {
    return figure(solution -> 1000 * solution.amps(element));
  }

  /** The current that a source delivers. */
  DoubleSupplier ampsFrom(String source) {
    return figure(solution -> -solution.amps(source));
  }

  DoubleSupplier volts(String element) {
    return figure(solution -> solution.volts(element));
  }

  DoubleSupplier watts(String element) {
    return figure(solution -> solution.watts(element));
  }

  /** The power that a source delivers. */
  DoubleSupplier wattsFrom(String source) {
    return figure(solution -> -solution.watts(source));
  }

  /** What a source without resistance sees. */
  DoubleSupplier ohmsAt(String source) {
    return figure(solution -> solution.volts(source) / -solution.amps(source));
  }

  private DoubleSupplier figure(ToDoubleFunction<Solution> figure) {
    return () -> {
      try {
        return figure.applyAsDouble(circuit.solve());
      } catch (NoSolution e) {
        throw new IllegalStateException(e);
      }
    };
  }
}
