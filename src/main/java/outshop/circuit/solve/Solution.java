package outshop.circuit.solve;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The direct-current solution of a network. */
public final class Solution {
  /** What {@link #place} answers for an element that is not there. */
  public static final int NONE = -1;

  private final Network network;
  private final double[] netVolts;
  private final double[] amps;
  private final double[] volts;
  private final int iterations;

  /**
   * A solution.
   *
   * @param netVolts by net
   * @param amps by element, positive from a to b
   * @param volts by element, a against b
   * @param iterations how many rounds it took
   */
  Solution(Network network, double[] netVolts, double[] amps, double[] volts, int iterations) {
    this.network = network;
    this.netVolts = netVolts;
    this.amps = amps;
    this.volts = volts;
    this.iterations = iterations;
  }

  /**
   * Volts by net, against the minus of the first source of its part of the network (where there is
   * none, of the first supply; behind a regulator with an output of its own, against the minus of
   * that output); 0 where no source reaches.
   */
  public double[] netVolts() {
    return netVolts.clone();
  }

  /** As {@link #netVolts()}, of one net. */
  public double netVolts(int net) {
    return netVolts[net];
  }

  /** How many rounds it took. */
  public int iterations() {
    return iterations;
  }

  /** The elements, in the network's order. */
  public List<Element> elements() {
    return network.elements();
  }

  /** Amps by element name, positive from a to b. */
  public Map<String, Double> elementAmps() {
    Map<String, Double> byName = new LinkedHashMap<>(2 * amps.length);
    for (int place = 0; place < amps.length; place++) {
      byName.put(elements().get(place).name(), amps[place]);
    }
    return Collections.unmodifiableMap(byName);
  }

  /**
   * Where an element stands among the network's, {@link #NONE} if it is not there. The same in
   * every solution of networks that differ in their values only.
   */
  public int place(String element) {
    return network.layout().placeOf.getOrDefault(element, NONE);
  }

  public double amps(int place) {
    return amps[place];
  }

  public double volts(int place) {
    return volts[place];
  }

  /** The power the element takes up, in watts; negative for a source that delivers. */
  public double watts(int place) {
    return amps[place] * volts[place];
  }

  public double amps(String element) {
    return amps[require(element)];
  }

  public double volts(String element) {
    return volts[require(element)];
  }

  /** As {@link #watts(int)}. */
  public double watts(String element) {
    return watts(require(element));
  }

  private int require(String element) {
    int place = place(element);
    if (place == NONE) {
      throw new IllegalArgumentException("no element " + element);
    }
    return place;
  }
}
