package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/**
 * How something stands that no single comparison tells.
 *
 * @param word a situation that the rule's page describes, or {@code fine}, or {@code unknown}
 * @param wants what would have to be known to say it
 */
public record Standing(String word, List<Want> wants) {
  static final Standing FINE = new Standing("fine", List.of());

  private static final String UNKNOWN = "unknown";

  public Standing {
    wants = List.copyOf(new TreeSet<>(wants));
    if (word.equals(UNKNOWN) == wants.isEmpty()) {
      throw new IllegalArgumentException("either a word, or what is wanted: " + word + wants);
    }
  }

  static Standing of(String word) {
    return new Standing(word, List.of());
  }

  static Standing open(List<Want> wants) {
    return new Standing(UNKNOWN, wants);
  }

  static Standing open(Said... unsaid) {
    return open(wants(unsaid));
  }

  /** What is missing among amounts. */
  static List<Want> wants(Amount... amounts) {
    List<Want> wants = new ArrayList<>();
    for (Amount amount : amounts) {
      if (amount instanceof Amount.Missing missing) {
        wants.addAll(missing.wants());
      }
    }
    return wants;
  }

  /** What is unsaid among words. */
  static List<Want> wants(Said... words) {
    List<Want> wants = new ArrayList<>();
    for (Said word : words) {
      if (word instanceof Said.Unsaid unsaid) {
        wants.add(unsaid.want());
      }
    }
    return wants;
  }
}
