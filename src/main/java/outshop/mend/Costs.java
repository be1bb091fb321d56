package outshop.mend;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;

/** What a change costs: the prices of the parts that come, less those of the parts that go. */
final class Costs {
  private Costs() {}

  /**
   * The difference in the price of the parts, in the catalogue's money; empty where a part that
   * comes or goes has no price. Wire and sleeve, sold by the metre, are not counted.
   */
  static Optional<Double> difference(Plan before, Plan after) {
    Set<String> names = new HashSet<>();
    before.parts().forEach(f -> names.add(f.name()));
    after.parts().forEach(f -> names.add(f.name()));
    double sum = 0;
    for (String name : names.stream().sorted().toList()) {
      Optional<Fitted> old = before.part(name);
      Optional<Fitted> fresh = after.part(name);
      String oldId = old.map(f -> f.part().id()).orElse("");
      String freshId = fresh.map(f -> f.part().id()).orElse("");
      if (!oldId.equals(freshId)) {
        Amount gone = old.map(f -> f.amount("price_each")).orElse(NOTHING);
        Amount come = fresh.map(f -> f.amount("price_each")).orElse(NOTHING);
        if (gone.isMissing() || come.isMissing()) {
          return Optional.empty();
        }
        sum += value(come) - value(gone);
      }
    }
    return Optional.of(Math.rint(sum * 100) / 100 + 0.0);
  }

  private static final Amount NOTHING = new Amount.Absent("price");

  private static double value(Amount price) {
    return price instanceof Amount.Known known ? known.value() : 0;
  }
}
