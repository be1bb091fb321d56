package outshop.report;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/**
 * The usual cautions, where people can be hurt. Common practice, no source, unless said. They never
 * replace the makers' instructions.
 */
final class Cautions {
  /** Of every report and of every part of one. */
  static final String GENERAL =
      "This report compares data; it cannot see the wiring, and it does not say that anything is without danger. The makers' "
          + "instructions, local codes and qualified people come first.";

  private Cautions() {}

  static List<String> of(Plan plan) {
    List<String> cautions = new ArrayList<>();
    cautions.add(GENERAL);
    if (plan.parts(Kind.PACK).stream()
        .map(Fitted::part)
        .anyMatch(p -> p.said("chemistry").or("li-ion").startsWith("li"))) {
      cautions.add(
          "Lithium packs can catch fire when overcharged, shorted, crushed, charged below 0 °C or damaged: charge only with a charger "
              + "made for the pack, where a fire could not spread, and stay by it.");
    }
    if (!plan.parts(Kind.PACK).isEmpty()) {
      cautions.add(
          "Join the pack last and part it first; a slipped tool across its terminals can burn. Take rings and watches off.");
    }
    if (!plan.parts(Kind.CHARGER).isEmpty()) {
      cautions.add(
          "Leave the mains side of a charger to its maker and to qualified people; never open it.");
    }
    boolean smoke =
        !plan.parts(Kind.SMOKE_HEATER).isEmpty() || !plan.names("locomotive.smoke").isEmpty();
    if (smoke) {
      cautions.add(
          "A smoke heater burns skin and softens insulation: keep wires and the pack away from it, and never run it dry.");
    }
    return cautions;
  }
}
