package outshop.metamorphic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Part;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/** A plan with one value of one fitted part changed. */
final class Changed {
  private Changed() {}

  static Plan blank(Plan plan, Fitted fitted, String column) {
    Map<String, Double> numbers = new HashMap<>(fitted.part().numbers());
    Map<String, String> words = new HashMap<>(fitted.part().words());
    numbers.remove(column);
    words.remove(column);
    return with(plan, fitted, numbers, words);
  }

  /** The number is given in the column's own unit, as it is held. */
  static Plan number(Plan plan, Fitted fitted, String column, double value) {
    Map<String, Double> numbers = new HashMap<>(fitted.part().numbers());
    numbers.put(column, value);
    return with(plan, fitted, numbers, fitted.part().words());
  }

  private static Plan with(
      Plan plan, Fitted fitted, Map<String, Double> numbers, Map<String, String> words) {
    Part old = fitted.part();
    Part part =
        new Part(old.kind(), old.id(), numbers, words, old.notes(), old.origin(), old.place());
    List<Fitted> parts = new ArrayList<>();
    for (Fitted each : plan.parts()) {
      parts.add(
          each.name().equals(fitted.name()) ? new Fitted(each.name(), part, each.place()) : each);
    }
    parts.addAll(plan.materials());
    return plan.withParts(parts);
  }
}
