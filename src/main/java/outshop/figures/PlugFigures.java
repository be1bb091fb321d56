package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.ChargingWay;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Want;

/** Plug and jack, or the connectors of charger and pack, by their sizes. */
final class PlugFigures {
  private PlugFigures() {}

  static List<Object> of(Bench bench) {
    Plan plan = bench.plan();
    List<Object> facts = new ArrayList<>();
    if (ChargingWay.packTakenOut(plan)) {
      for (Fitted charger : plan.parts(Kind.CHARGER)) {
        plan.parts(Kind.PACK).forEach(pack -> facts.add(connectors(charger, pack)));
      }
      return facts;
    }
    Optional<Fitted> jack = bench.first(Kind.JACK);
    if (jack.isEmpty()) {
      return facts;
    }
    List<Fitted> plugs = plan.parts(Kind.PLUG);
    if (plugs.isEmpty()) {
      for (Fitted charger : plan.parts(Kind.CHARGER)) {
        facts.add(fit(jack.get(), charger, "plug_bore_mm", "plug_outer_mm"));
      }
    } else {
      plugs.forEach(plug -> facts.add(fit(jack.get(), plug, "bore_mm", "outer_mm")));
    }
    return facts;
  }

  private static PlugFit fit(Fitted jack, Fitted plug, String boreColumn, String outerColumn) {
    Amount bore = plug.amount(boreColumn);
    Amount outer = plug.amount(outerColumn);
    Amount pin = jack.amount("pin_mm");
    Amount takes = jack.amount("outer_mm");
    return new PlugFit(
        Places.of(jack), plug.name(), bore, pin, outer, takes, sizes(bore, pin, outer, takes));
  }

  private static Standing sizes(Amount bore, Amount pin, Amount outer, Amount takes) {
    if (bore.isAbsent() || outer.isAbsent()) {
      return Standing.of("no-plug");
    }
    if (bore.isKnown() && pin.isKnown() && !same(bore, pin)) {
      boolean narrow = Exact.below(bore.get().value(), pin.get().value());
      return Standing.of(narrow ? "narrow" : "loose");
    }
    if (outer.isKnown() && takes.isKnown() && !same(outer, takes)) {
      return Standing.of("outside");
    }
    List<Want> wants = Standing.wants(bore, pin, outer, takes);
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  private static boolean same(Amount one, Amount other) {
    return Exact.same(one.get().value(), other.get().value());
  }

  private static ConnectorFit connectors(Fitted charger, Fitted pack) {
    Said pattern = charger.said("connector_pattern");
    Said meets = pack.said("connector_pattern");
    List<Want> wants = Standing.wants(pattern, meets);
    return new ConnectorFit(
        Places.of(charger),
        pack.name(),
        pattern,
        meets,
        wants.isEmpty() ? alike(pattern, meets) : Standing.open(wants));
  }

  private static Standing alike(Said pattern, Said meets) {
    return pattern.is(meets.or("")) ? Standing.FINE : Standing.of("other");
  }
}
