package outshop.sheets;

import java.util.List;
import java.util.Optional;

/**
 * The buying list: what to buy, how much of it, what it costs, what is missing.
 *
 * @param parts one row for each sort of part
 * @param materials wire and sleeve by the metre, and what a careful builder has at hand
 * @param missing what the plan needs and does not name
 * @param total of all rows with a price
 * @param unpriced what has no price, so that the total is short of it
 * @param budget as the plan has it
 * @param left of the budget, below zero where it is overdrawn
 */
public record BuyingList(
    String title,
    String planFile,
    List<Row> parts,
    List<Row> materials,
    List<Line> missing,
    Figure total,
    List<String> unpriced,
    Optional<Figure> budget,
    Optional<Figure> left) {

  public BuyingList {
    parts = List.copyOf(parts);
    materials = List.copyOf(materials);
    missing = List.copyOf(missing);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * One sort of part.
   *
   * @param quantity pieces or metres; empty where it is not known
   * @param what its title
   * @param where the names it has in the plan
   * @param each price of a piece or metre
   * @param cost quantity x price
   */
  public record Row(
      Optional<Figure> quantity,
      String id,
      String what,
      String where,
      Optional<Figure> each,
      Optional<Figure> cost) {}
}
