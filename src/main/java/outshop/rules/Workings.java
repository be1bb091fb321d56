package outshop.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outshop.findings.Finding;
import outshop.units.Amount;
import outshop.units.AmountText;

/** Lays out how values were come by, inputs before what was computed from them, each value once. */
final class Workings {
  private Workings() {}

  static List<Finding.Step> of(List<Amount.Known> values) {
    List<Finding.Step> steps = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Amount.Known value : values) {
      lay(value, steps, seen);
    }
    return steps;
  }

  private static void lay(Amount.Known value, List<Finding.Step> steps, Set<String> seen) {
    if (!seen.add(value.label())) {
      return;
    }
    for (Amount.Known input : value.from()) {
      lay(input, steps, seen);
    }
    String text = AmountText.text(value);
    String range =
        value.isAssumed() && value.low() != value.high()
            ? " ("
                + AmountText.text(value.low(), value.unit())
                + " to "
                + AmountText.text(value.high(), value.unit())
                + ")"
            : "";
    steps.add(new Finding.Step(value.label(), text + range, value.how()));
  }
}
