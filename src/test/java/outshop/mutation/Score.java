package outshop.mutation;

import java.util.List;
import java.util.Locale;

/**
 * How many mutants of a rule, or of several, met which fate.
 *
 * @param mutants those that compile; the next four are of these
 * @param noticed by an example
 * @param stopped noticed by an error
 * @param equivalent not noticed, and on the list of those that no example can tell from the rule
 * @param survive not noticed, and not on that list
 * @param notCompiled made, and not counted
 */
public record Score(
    int mutants, int noticed, int stopped, int equivalent, int survive, int notCompiled) {
  /** The heading of a table of scores, behind the name of its first column. */
  static final String HEAD =
      " | mutants | noticed | of these by an error | equivalent | survive | do not compile | score |\n"
          + "| --- | --- | --- | --- | --- | --- | --- | --- |";

  private static final int COUNTS = 6;

  /** How many were made. */
  public int made() {
    return mutants + notCompiled;
  }

  /** Such as {@code 14 of 14, 2 equivalent}. */
  public String brief() {
    return noticed
        + " of "
        + (mutants - equivalent)
        + (equivalent == 0 ? "" : ", " + equivalent + " equivalent");
  }

  String words() {
    return "%d mutants, of which %d equivalent; of the other %d the examples notice %d: %s"
        .formatted(mutants, equivalent, mutants - equivalent, noticed, share());
  }

  /** A row of a table, behind the name in its first cell. */
  String cells() {
    return " | %d | %d | %d | %d | %d | %d | %s"
        .formatted(mutants, noticed, stopped, equivalent, survive, notCompiled, share());
  }

  /** Reads the cells of a row, without the first. */
  static Score of(List<String> cells) {
    int[] counts =
        cells.subList(0, COUNTS).stream().map(String::strip).mapToInt(Integer::parseInt).toArray();
    return new Score(counts[0], counts[1], counts[2], counts[3], counts[4], counts[5]);
  }

  private String share() {
    return mutants == equivalent
        ? "-"
        : String.format(Locale.ROOT, "%.1f %%", 100.0 * noticed / (mutants - equivalent));
  }
}
