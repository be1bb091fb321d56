package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.ChargingWay;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Each pack by itself: whether it may be charged, in which warmth, its balance and its energy. */
final class PackFigures {
  /**
   * Watt-hours of a lithium battery that a passenger may take on an aeroplane without asking: the
   * air carriers' dangerous goods rules.
   */
  private static final double FREELY_WATT_HOURS = 100;

  /** The same with the carrier's approval. */
  private static final double MOST_WATT_HOURS = 160;

  /** Usual limits for charging lithium cells, in degrees Celsius: IEC 62133-2, from memory. */
  private static final double COLDEST = 0;

  private static final double WARMEST = 45;

  private PackFigures() {}

  static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    Plan plan = bench.plan();
    String way = way(plan);
    for (Fitted pack : plan.parts(Kind.PACK)) {
      Said chemistry = pack.said("chemistry");
      if (!way.isEmpty()) {
        facts.add(new PackOnCharge(Places.of(pack), chemistry, way, mayCharge(pack, chemistry)));
      }
      if (CellCharge.lithium(chemistry) || chemistry.isUnsaid()) {
        balance(plan, pack, facts);
        facts.add(
            new PackEnergy(
                Places.of(pack),
                energy(pack, chemistry),
                watts("without asking", FREELY_WATT_HOURS),
                watts("with approval", MOST_WATT_HOURS)));
      }
    }
    if (!way.isEmpty()) {
      temperature(plan, facts);
    }
    return facts;
  }

  /** What would charge the packs, in words; empty if nothing would. */
  private static String way(Plan plan) {
    if (!plan.parts(Kind.CHARGER).isEmpty()) {
      return "a charger";
    }
    return plan.parts(Kind.JACK).isEmpty() ? "" : "a charging jack";
  }

  private static Standing mayCharge(Fitted pack, Said chemistry) {
    if (CellCharge.primary(chemistry)) {
      return Standing.of("primary");
    }
    if (pack.amount("charge_volts").isAbsent() || pack.amount("max_charge_amps").isAbsent()) {
      return Standing.of("forbidden");
    }
    return chemistry.isUnsaid() ? Standing.open(chemistry) : Standing.FINE;
  }

  private static void balance(Plan plan, Fitted pack, List<Object> facts) {
    Amount cells = PackValues.of(pack).cells();
    boolean one = cells instanceof Amount.Known k && !Exact.above(k.value(), 1);
    if (!one) {
      facts.add(new PackBalance(Places.of(pack), cells, balanced(plan, pack, cells)));
    }
  }

  private static Standing balanced(Plan plan, Fitted pack, Amount cells) {
    Said balancing = pack.said("balancing");
    if (balancing.is("internal")) {
      return Standing.FINE;
    }
    List<Want> wants = new ArrayList<>(Standing.wants(pack.said("chemistry"), balancing));
    wants.addAll(Standing.wants(cells));
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    return balancing.is("lead") ? throughLead(plan) : Standing.of("uneven");
  }

  /** A balance lead counts where the pack is taken out to a charger that uses it. */
  private static Standing throughLead(Plan plan) {
    List<Fitted> chargers = plan.parts(Kind.CHARGER);
    if (!ChargingWay.packTakenOut(plan) || chargers.isEmpty()) {
      return Standing.of("lead-idle");
    }
    Said balances = chargers.get(0).said("balances");
    if (balances.isUnsaid()) {
      return Standing.open(balances);
    }
    return balances.is("yes") ? Standing.FINE : Standing.of("lead-idle");
  }

  /** As declared, else nominal volts times capacity, as the transport rules reckon. */
  private static Amount energy(Fitted pack, Said chemistry) {
    Amount reckoned =
        Amount.computed(
            pack.name() + ": energy",
            Unit.WATT_HOURS,
            "nominal volts x capacity",
            v -> v[0] * v[1],
            PackValues.of(pack).nominalVolts(),
            pack.amount("capacity_ah"));
    Amount energy = pack.amount("energy_wh").orElse(reckoned);
    boolean much = energy instanceof Amount.Known k && Exact.above(k.value(), FREELY_WATT_HOURS);
    return much && chemistry.isUnsaid() ? new Amount.Missing(Standing.wants(chemistry)) : energy;
  }

  private static Amount watts(String label, double value) {
    return Amount.known(
        value, Unit.WATT_HOURS, Origin.STANDARD, "taken " + label, "air carriers' rules");
  }

  /** One for the whole plan: the narrowest of its packs' limits. */
  private static void temperature(Plan plan, List<Object> facts) {
    List<Fitted> packs =
        plan.parts(Kind.PACK).stream()
            .filter(p -> !CellCharge.primary(p.said("chemistry")))
            .filter(p -> !p.amount("charge_min_celsius").isAbsent())
            .filter(p -> !p.amount("charge_max_celsius").isAbsent())
            .toList();
    if (packs.isEmpty()) {
      return;
    }
    boolean lithium = packs.stream().anyMatch(p -> CellCharge.lithium(p.said("chemistry")));
    facts.add(
        new ChargingTemperature(
            Places.of(packs.get(0)),
            Cases.greatest(
                packs.stream().map(p -> limit(p, "charge_min_celsius", COLDEST)).toList()),
            Cases.least(packs.stream().map(p -> limit(p, "charge_max_celsius", WARMEST)).toList()),
            Standing.of(lithium ? "lithium" : "other")));
  }

  private static Amount limit(Fitted pack, String column, double usual) {
    return pack.amount(column)
        .orElse(
            Amount.known(
                usual,
                Unit.CELSIUS,
                Origin.STANDARD,
                pack.name() + ": " + column.replace('_', ' '),
                "not stated; usual for charging cells"));
  }
}
