package outshop.mend;

import java.util.List;
import outshop.findings.Finding;

/**
 * What one part would have to be like for the findings about it to go.
 *
 * @param part its name in the plan
 * @param kind what it is
 * @param inTheWay the findings that stand
 * @param asks each column that a bound asks something of
 * @param meeting how many parts of the catalogue meet all of it; they bring other faults
 * @param tried how many parts of that kind the catalogue has
 */
public record Need(
    String part, String kind, List<Finding> inTheWay, List<Ask> asks, int meeting, int tried) {

  public Need {
    inTheWay = List.copyOf(inTheWay);
    asks = List.copyOf(asks);
  }

  /**
   * What a bound asks of one column.
   *
   * @param column such as {@code input_max_volts}
   * @param words what the column holds
   * @param atLeast whether the value may not be less; else it may not be more
   * @param value with its unit
   * @param stands whether it is not met as it is
   * @param meeting how many parts of the catalogue meet it
   */
  public record Ask(
      String column, String words, boolean atLeast, String value, boolean stands, int meeting) {}
}
