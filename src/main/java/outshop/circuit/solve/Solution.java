package outshop.circuit.solve;

import java.util.Map;

/**
 * The direct-current solution of a network.
 *
 * @param netVolts by net, against the minus of the first source of its part of the network (where
 *     there is none, of the first supply; behind a regulator with an output of its own, against the
 *     minus of that output); 0 where no source reaches
 * @param elementAmps by element name, positive from a to b
 * @param elementVolts by element name, a against b
 * @param iterations how many rounds it took
 */
public record Solution(
    double[] netVolts,
    Map<String, Double> elementAmps,
    Map<String, Double> elementVolts,
    int iterations) {

  public double amps(String element) {
    return require(elementAmps, element);
  }

  public double volts(String element) {
    return require(elementVolts, element);
  }

  /** The power the element takes up, in watts; negative for a source that delivers. */
  public double watts(String element) {
    return amps(element) * volts(element);
  }

  private static double require(Map<String, Double> values, String element) {
    Double value = values.get(element);
    if (value == null) {
      throw new IllegalArgumentException("no element " + element);
    }
    return value;
  }
}
